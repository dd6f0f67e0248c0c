using TagPage.Web.Data;
using TagPage.Web.Mail;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>The words that bring a private link, in the client's language. Links are put in only where they are shown or sent.</summary>
public sealed class CornerTexts(MailWriter writer, ShopStore shops, ShopClock clock)
{
    public string Link(CornerLinkStore.Row link) => writer.CornerLink(link.Id, link.Version);

    /// <summary>With the placeholder {corner} for the link.</summary>
    public (string Subject, string Body) LinkMail(CornerLinkStore.Row link)
    {
        var language = CornerWords.Fitting(Languages.OfOrEnglish(link.Language));
        var (say, shop) = (CornerWords.Of(language).Mail, shops.Get().Name);
        return (say.LinkSubject.Fill(("shop", shop)),
            say.LinkBody.Fill(("client", link.Client), ("shop", shop), ("day", language.Day(clock.DayOf(link.ExpiresAt)))));
    }

    public string LinkSms(CornerLinkStore.Row link) =>
        CornerWords.Of(Languages.OfOrEnglish(link.Language)).Mail.LinkSms.Fill(("shop", Sms.Fold(shops.Get().Name)), ("link", Link(link)));
}
