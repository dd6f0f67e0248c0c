using TagPage.Core.Forecast;
using TagPage.Core.Text;
using TagPage.Records.Outbox;
using TagPage.Records.Players;
using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Mail;

/// <summary>A racket as a reminder names it.</summary>
/// <param name="Player">As the household calls the player.</param>
/// <param name="Number">Within the player.</param>
/// <param name="By">Its restring-by date, which it has.</param>
public sealed record NamedRacket(string Player, int Number, RestringBy By)
{
    /// <summary>Those that have a date, by the names of their household.</summary>
    public static IReadOnlyList<NamedRacket> Of(IEnumerable<(string Player, int Number, RestringBy By)> rackets)
    {
        var all = rackets.Where(r => r.By.Due is not null).ToList();
        var names = GivenNames.Of(all.Select(r => r.Player));
        return [.. all.Select(r => new NamedRacket(names[r.Player], r.Number, r.By))];
    }
}

/// <summary>What a reminder says: the owner's own words, or the product's in the client's language.</summary>
public sealed class ReminderWords(ShopDetails shop, Language language, string client, IReadOnlyList<NamedRacket> rackets)
{
    public static readonly string[] Placeholders = ["client", "shop", "rackets", "link", "stop"];

    private readonly ReminderMailPhrases _say = language.Phrases.ReminderMail;

    public string Subject() => Or(shop.Reminder.Subject, _say.Subject).Fill(("shop", shop.Name), ("client", client));

    /// <summary>The mail of this reminder, its links still to be made.</summary>
    public MailText Mail(long reminder) => Mail(MailText.Link(LinkPurpose.Reminder, reminder), MailText.Link(LinkPurpose.StopReminders, reminder));

    /// <summary>Markdown.</summary>
    public MailText Mail(MailText link, MailText stop) => MailText.Fill(Or(shop.Reminder.Text, _say.Mail),
        ("client", client), ("shop", shop.Name), ("rackets", MailText.Join("\n", rackets.Select(Line))), ("link", link), ("stop", stop));

    private MailText Line(NamedRacket racket) => MailText.Fill(racket.By.DaysLeft < 0 ? _say.RacketPastLine : _say.RacketLine,
        ("racket", language.Phrases.Trade.RacketOf.Fill(("player", racket.Player), ("number", $"{racket.Number}"))),
        ("day", language.DayInText(racket.By.Due!.Value)),
        ("when", language.When(racket.By.DaysLeft!.Value)),
        ("reason", language.Because(racket.By.DecidedBy!.Value)));

    /// <summary>
    /// In one part wherever the alphabet allows, else in two: with names, then with numbers alone, then with fewer
    /// rackets. The page behind the link lists them all.
    /// </summary>
    public string Sms(string link, string stop)
    {
        var texts = Tries().Select(named => SmsOf(named, link, stop)).ToList();
        return texts.FirstOrDefault(text => Words.Sms.Of(text) is { IsGsm7: true, Parts: 1 })
            ?? texts.FirstOrDefault(text => Words.Sms.Of(text).Parts <= 2)
            ?? texts[^1];
    }

    private IEnumerable<string> Tries()
    {
        var trade = language.Phrases.Trade;
        var comma = language.Phrases.Time.Comma;
        var numbers = rackets.Select(r => trade.RacketInText.Fill(("number", $"{r.Number}"))).Distinct().ToList();
        yield return string.Join(comma, rackets.Select(r => trade.RacketOf.Fill(("player", r.Player), ("number", $"{r.Number}"))));
        yield return string.Join(comma, rackets.Select(r => Words.Sms.Fits(r.Player)
            ? trade.RacketOf.Fill(("player", r.Player), ("number", $"{r.Number}"))
            : trade.RacketInText.Fill(("number", $"{r.Number}"))));
        for (var count = numbers.Count; count > 0; count--)
            yield return string.Join(comma, numbers.Take(count));
    }

    private string SmsOf(string named, string link, string stop) => PlainMail.Of(MailText.Fill(Or(shop.ReminderSms.Text, _say.Sms),
        ("shop", Words.Sms.Fold(shop.Name)), ("client", Words.Sms.Fold(client)), ("rackets", named), ("link", MailText.Words(link)), ("stop", MailText.Words(stop))));

    private static string Or(string own, string products) => own.Length > 0 ? own : products;
}
