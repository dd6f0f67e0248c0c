using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Web.Data;
using TagPage.Web.Mail;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Nudges;

/// <summary>Reminds one household of a batch by mail, judged at the moment it is its turn.</summary>
public sealed class BatchReminder(NewNudgeStore news, OutboxStore outbox, ShopStore shops, ShopClock clock)
{
    /// <summary>Why a household cannot be reminded in a batch now; null where it can.</summary>
    public string? WhyNot(NewNudgeStore.Household household) => household switch
    {
        { Due.Count: 0 } => "nothing is due any more",
        { Reminders: false } => "wants no reminders",
        { RemindBy: RemindBy.Sms } => "wishes SMS, which you send yourself",
        { Mail: null } => "no mail address on file",
        _ when news.IsQuiet(household) => "wants no reminders in this month",
        _ when news.IsTooSoon(household) => $"reminded less than {shops.Get().DaysBetweenNudges} days ago",
        _ when shops.Get().Mail is null => "the shop has no mail address of its own",
        _ => null,
    };

    /// <summary>In the caller's transaction: the reminder with its mail, or why not.</summary>
    internal (long? Nudge, string Why) Remind(SqliteConnection connection, long client)
    {
        if (news.Get(connection, client) is not { } household)
            return (null, "no longer on file");
        if (WhyNot(household) is { } why)
            return (null, why);
        var id = NewNudgeStore.Insert(connection, household, clock.Now, byPhone: false);
        var words = new NudgeWords(shops.Get(), Languages.OfOrEnglish(household.Language), household.Name,
            NamedRacket.Of(household.Due.Select(d => (d.Racket.Player, d.Racket.Number, d.By))));
        outbox.Queue(connection, new NewMail(MailKind.Nudge, client, words.Subject(), words.Mail(id)) { NudgeId = id });
        connection.Execute("UPDATE nudge SET sent_how = 'Mail', sent_at = @Now WHERE id = @id", new { id, clock.Now });
        return (id, "");
    }
}
