using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Web.Data;
using TagPage.Web.Mail;
using TagPage.Web.Pages.Nudge;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>Mails about a racket at the shop: the owner's own words, or the product's in the client's language.</summary>
public sealed class CornerNotices(ShopStore shops)
{
    /// <param name="Subject">One line.</param>
    /// <param name="Body">Markdown.</param>
    /// <param name="Sms">The same for an app of the owner's.</param>
    public sealed record Notice(string Subject, MailText Body, string Sms);

    private sealed record To
    {
        public long ClientId { get; init; }
        public string Client { get; init; } = "";
        public string? Mail { get; init; }
        public string Language { get; init; } = "en";
        public string Player { get; init; } = "";
        public int Number { get; init; }
        public long? PriceMinor { get; init; }
    }

    /// <summary>"We got your request"; null where no mail can go. In the caller's transaction.</summary>
    public Notice? Received(SqliteConnection connection, long job)
    {
        var shop = shops.Get();
        return Get(connection, job) is { Mail: not null } to && shop.Mail is not null
            ? Of(to, shop, m => (Or(shop.ReceivedSubject, m.ReceivedSubject), Or(shop.ReceivedMarkdown, m.ReceivedBody)))
            : null;
    }

    /// <summary>"Ready to be collected", whether or not a mail can go.</summary>
    public Notice Ready(SqliteConnection connection, long job)
    {
        var shop = shops.Get();
        return Of(Get(connection, job)!, shop, m => (Or(shop.ReadySubject, m.ReadySubject), Or(shop.ReadyMarkdown, m.ReadyBody)));
    }

    private static To? Get(SqliteConnection connection, long job) => connection.QuerySingleOrDefault<To>(GetSql, new { job });

    private const string GetSql = """
        SELECT c.id AS client_id, c.name AS client, c.mail, c.language, p.name AS player, r.number, j.price_minor
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE j.id = @job
        """;

    private static Notice Of(To to, ShopDetails shop, Func<CornerMailPhrases, (string Subject, string Body)> which)
    {
        var language = CornerWords.Fitting(Languages.OfOrEnglish(to.Language));
        var say = CornerWords.Of(language).Mail;
        var racket = language.Phrases.Trade.RacketOf.Fill(("player", GivenNames.Of([to.Player])[to.Player]), ("number", $"{to.Number}"));
        (string Name, string Value)[] values =
        [
            ("client", to.Client), ("shop", shop.Name), ("racket", racket), ("hours", shop.OpeningHours),
            ("price", to.PriceMinor is { } price ? Shown.Money(price, shop) : "–"),
        ];
        var (subject, body) = which(say);
        var sms = MailText.Fill(say.ReadySms, ("shop", Sms.Fold(shop.Name)), ("racket", Sms.Fold(racket)));
        return new Notice(subject.Fill(values), MailText.Fill(body, [.. values.Select(v => (v.Name, (MailText)v.Value))]), PlainMail.Of(sms));
    }

    private static string Or(string own, string products) => own.Length > 0 ? own : products;
}
