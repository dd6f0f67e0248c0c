using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

/// <summary>Saves what a household answers and acts on it, all of it or nothing.</summary>
public sealed class AnswerStore(Database database, ShopClock clock)
{
    /// <summary>What was answered.</summary>
    /// <param name="Rackets">One for each racket that an answer was chosen for.</param>
    /// <param name="Reminders">False to stop them, true to have them again, null to leave it.</param>
    public sealed record Given(IReadOnlyList<RacketAnswer> Rackets, bool? Reminders);

    /// <summary>By the household that was reminded, or by the shop as told. Saved again unchanged, an answer does nothing.</summary>
    public Outcome Save(Who who, ReminderStore.Row reminder, Given given) => database.Write<Outcome>(c =>
    {
        if (!c.ExecuteScalar<bool>(TheirsSql, new { who.IsOwner, who.ClientId, reminder.Id }))
            return new Outcome.Absent();
        var changes = Changes(c, reminder.Id, given.Rackets);
        List<long> shut = [.. changes.Where(change => !change.Racket.IsOpen).Select(change => change.Racket.RacketId)];
        if (shut.Count > 0)
            return new Outcome.Refused(new AnswersShut(shut));
        foreach (var (racket, answer) in changes)
            new AnswerEffects(c, clock.Today, clock.Now).Change(reminder.Id, racket, answer, who.IsShop ? AnsweredBy.Owner : AnsweredBy.Client);
        if (given.Reminders is { } wanted)
            SetReminders(c, reminder.ClientId, wanted);
        c.Execute(HoldBackSql, new { reminder.Id });
        return new Outcome.Done(reminder.Id);
    });

    /// <summary>Answered by text message or by phone while the email still waited.</summary>
    private const string HoldBackSql = $"""
        UPDATE outbox SET state = {DeliveryStore.GivenUp}, last_error = 'It was answered before this email left.'
        WHERE reminder_id = @Id AND state = 'Queued' AND EXISTS (SELECT 1 FROM reminder n WHERE n.id = @Id AND {ReminderStore.AnsweredInFull})
        """;

    private const string TheirsSql = "SELECT EXISTS (SELECT 1 FROM reminder WHERE id = @Id AND (@IsOwner OR client_id = @ClientId))";

    private List<(ReminderRacket Racket, RacketAnswer Answer)> Changes(SqliteConnection connection, long reminder, IEnumerable<RacketAnswer> answers)
    {
        var rackets = ReminderStore.Rackets(connection, reminder, clock).ToDictionary(r => r.RacketId);
        return [.. answers
            .Where(a => rackets.TryGetValue(a.RacketId, out var racket) && racket.Given != a)
            .Select(a => (rackets[a.RacketId], a))];
    }

    /// <summary>No more reminders to the household.</summary>
    public Outcome Stop(Who who, long client) => database.Write<Outcome>(c =>
    {
        if (!c.ExecuteScalar<bool>(ThemselvesSql, new { who.IsOwner, who.ClientId, client }))
            return new Outcome.Absent();
        SetReminders(c, client, wanted: false);
        return new Outcome.Done(client);
    });

    private const string ThemselvesSql = $"SELECT EXISTS (SELECT 1 FROM client WHERE id = @client AND {Who.DecidesForClient})";

    private void SetReminders(SqliteConnection connection, long client, bool wanted) =>
        connection.Execute(RemindersSql, new { client, wanted, clock.Today });

    // Those on their way are held back by the trigger client_unreminded, like wherever else it is said.
    private const string RemindersSql = """
        UPDATE client SET reminders = @wanted, reminders_changed_on = @Today, version = version + 1
        WHERE id = @client AND reminders <> @wanted
        """;
}
