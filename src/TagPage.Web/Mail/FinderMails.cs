using TagPage.Records.Clients;
using TagPage.Records.LostAndFound;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Mail;

/// <summary>Emails between a finder and the person who looks after a racket.</summary>
public sealed class FinderMails(ShopStore shops, ShopClock clock) : IFinderMails
{
    public WrittenMail Acted(MailKind kind, Addressee client, IReadOnlyList<FoundNoticeRow> events)
    {
        var language = kind == MailKind.FoundNotice ? Languages.OfOrEnglish(client.Language) : Languages.English;
        var words = new FoundNoticeText(kind, client.Name, language, shops.Get(), clock);
        return new WrittenMail(words.Subject(events), words.Body(events));
    }

    public WrittenMail Answer(string language, string answer)
    {
        var say = Languages.OfOrEnglish(language).Phrases.Answer;
        return new WrittenMail(say.Subject,
            MailText.Join("\n\n", [MailText.Words(say.MailIntro), MailText.Quoted(answer), MailText.Fill(say.MailEnd, ("shop", shops.Get().Name))]));
    }
}
