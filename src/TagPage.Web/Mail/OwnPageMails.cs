using TagPage.Core.Text;
using TagPage.Records.Clients;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Mail;

/// <summary>The words that bring a private link, in the client's language. Links in mails are made only when they are sent.</summary>
public sealed class OwnPageMails(MailWriter writer, ShopStore shops, ShopClock clock) : IOwnPageMails
{
    public string Address(OwnPageLinkStore.Row link) => writer.OwnPageLink(link.Id, link.Secret);

    public WrittenMail Link(OwnPageLinkStore.Row link)
    {
        var language = OwnPageWords.Fitting(Languages.OfOrEnglish(link.Language));
        var (say, shop) = (OwnPageWords.Of(language).Mail, shops.Get().Name);
        return new WrittenMail(say.LinkSubject.Fill(("shop", shop)),
            MailText.Fill(say.LinkBody, ("client", link.Client), ("shop", shop), ("day", language.DayInText(clock.DayOf(link.ExpiresAt))),
                ("corner", MailText.Link(LinkPurpose.OwnPage, link.Id))));
    }

    public WrittenMail Code(Addressee client, long code) =>
        Mail(client, m => (m.CodeSubject, m.CodeBody), _ => ("code", MailText.Digits(code)));

    public WrittenMail FoundChoiceChanged(Addressee client, FoundChoice choice) =>
        Mail(client, m => (m.ConsentSubject, m.ConsentBody), language => ("what", new OwnPageNames(new PageLanguage(language, false)).Of(choice)));

    public WrittenMail ContactChanged(Addressee client) =>
        Mail(client, m => (m.ContactSubject, m.ContactBody));

    public WrittenMail Forgetting(Addressee client, DateOnly day) =>
        Mail(client, m => (m.ForgetSubject, m.ForgetBody), language => ("what", language.DayInText(day)));

    private WrittenMail Mail(Addressee client, Func<OwnPageMailPhrases, (string, string)> which, Func<Language, (string, MailText)>? more = null)
    {
        var language = OwnPageWords.Fitting(Languages.OfOrEnglish(client.Language));
        var (subject, body) = which(OwnPageWords.Of(language).Mail);
        var shop = shops.Get().Name;
        (string, MailText)[] values = [("client", client.Name), ("shop", shop)];
        return new WrittenMail(subject.Fill(("shop", shop)), MailText.Fill(body, more is null ? values : [.. values, more(language)]));
    }

    public string LinkSms(OwnPageLinkStore.Row link) =>
        PlainMail.Of(MailText.Fill(OwnPageWords.Of(Languages.OfOrEnglish(link.Language)).Mail.LinkSms, ("shop", Sms.Fold(shops.Get().Name)), ("link", MailText.Words(Address(link)))));
}
