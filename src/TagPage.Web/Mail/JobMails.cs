using TagPage.Core.Text;
using TagPage.Records.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.Players;
using TagPage.Records.Shop;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Mail;

/// <summary>Mails about a racket at the shop: the owner's own words, or the product's in the client's language.</summary>
public sealed class JobMails(ShopStore shops, ShopClock clock) : IJobMails
{
    /// <param name="Subject">One line.</param>
    /// <param name="Body">Markdown.</param>
    /// <param name="Sms">The same for an app of the owner's.</param>
    public sealed record Notice(string Subject, MailText Body, string Sms);

    /// <summary>"We have your request".</summary>
    WrittenMail IJobMails.Received(JobRow job)
    {
        var shop = shops.Get();
        return Mail(Of(job, shop, m => (Or(shop.Received.Subject, m.ReceivedSubject), Or(shop.Received.Text, m.ReceivedBody))));
    }

    WrittenMail IJobMails.Ready(JobRow job) => Mail(Ready(job));

    /// <summary>"Ready to collect", whether or not an email can be sent.</summary>
    public Notice Ready(JobRow job)
    {
        var shop = shops.Get();
        return Of(job, shop, m => (Or(shop.Ready.Subject, m.ReadySubject), Or(shop.Ready.Text, m.ReadyBody)));
    }

    private static WrittenMail Mail(Notice notice) => new(notice.Subject, notice.Body);

    private Notice Of(JobRow to, ShopDetails shop, Func<OwnPageMailPhrases, (string Subject, string Body)> which)
    {
        var language = OwnPageWords.Fitting(Languages.OfOrEnglish(to.ClientLanguage));
        var say = OwnPageWords.Of(language).Mail;
        var racket = language.Phrases.Trade.RacketOf.Fill(("player", GivenNames.Of([to.Player])[to.Player]), ("number", $"{to.Number}"));
        (string Name, string Value)[] values =
        [
            ("client", to.Client), ("shop", shop.Name), ("racket", racket), ("hours", OpeningWords.Lines(language, shop, clock.Today)),
            ("price", Price(to, shop, language, say) ?? ""),
        ];
        var (subject, body) = which(say);
        if (Price(to, shop, language, say) is null)
            (subject, body) = (subject.WithoutClauseOf("price"), body.WithoutClauseOf("price"));
        var sms = MailText.Fill(say.ReadySms, ("shop", Sms.Fold(shop.Name)), ("racket", Sms.Fold(racket)));
        return new Notice(subject.Fill(values), MailText.Fill(body, [.. values.Select(v => (v.Name, (MailText)v.Value))]), PlainMail.Of(sms));
    }

    /// <summary>What this client still has to pay, or that it is paid. Null where there is no price, or somebody else pays, whom it concerns alone.</summary>
    private static string? Price(JobRow job, ShopDetails shop, Language language, OwnPageMailPhrases say) => job switch
    {
        { Payer: not null } or { PriceMinor: null } => null,
        { PaidOn: not null } => say.Paid,
        { OpenMinor: { } open } => language.Money(open, shop),
        _ => null,
    };

    private static string Or(string own, string products) => own.Length > 0 ? own : products;
}
