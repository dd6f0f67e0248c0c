using TagPage.Web.Data;
using TagPage.Web.Mail;
using TagPage.Web.Pages.Nudge;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Nudges;

/// <summary>A reminder's words with its links, made anew each time: links are not kept anywhere.</summary>
public sealed class NudgeTexts(NudgeStore nudges, MailWriter writer, ShopStore shops, ShopClock clock)
{
    /// <param name="Link">Private: opens the household's page.</param>
    /// <param name="Subject">Of the mail.</param>
    /// <param name="Mail">As Markdown, with links.</param>
    /// <param name="Sms">With the link.</param>
    /// <param name="Queued">The mail, its links still to be made.</param>
    public sealed record Texts(string Link, string Subject, string Mail, string Sms, MailText Queued);

    public Texts Of(NudgeRow nudge)
    {
        var (today, shop) = (clock.Today, shops.Get());
        var rackets = NamedRacket.Of(nudges.Rackets(nudge.Id).Select(r => (r.Player, r.Number, r.Work(today, shop.StartingValues))));
        var words = new NudgeWords(shop, Languages.OfOrEnglish(nudge.Language), nudge.Client, rackets);
        var (link, stop) = (writer.NudgeLink(nudge.Id, nudge.Secret), writer.StopLink(nudge.Id, nudge.StopSecret));
        return new Texts(link, words.Subject(), PlainMail.Of(words.Mail(MailText.Words(link), MailText.Words(stop))), words.Sms(link, stop), words.Mail(nudge.Id));
    }
}
