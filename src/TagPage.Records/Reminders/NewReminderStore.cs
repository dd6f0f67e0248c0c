using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Clients;
using TagPage.Records.DueDates;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

/// <summary>Makes a reminder to a household about the rackets that are due, for the shop.</summary>
public sealed class NewReminderStore(Database database, ShopStore shops, ShopClock clock)
{
    /// <summary>How long a private link works.</summary>
    private static readonly TimeSpan GoodFor = TimeSpan.FromDays(60);

    public sealed record Household
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public string Language { get; init; } = "en";
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public bool Reminders { get; init; }
        public RemindBy RemindBy { get; init; }
        public int QuietMonths { get; init; }

        /// <summary>When it was reminded last; null for never.</summary>
        public DateTimeOffset? RemindedAt { get; init; }

        /// <summary>The batch under way in which it waits for its reminder, or null.</summary>
        public long? BatchId { get; init; }

        /// <summary>Worked out with the reasons; empty where they were not asked for.</summary>
        public IReadOnlyList<DueRacket> Due { get; init; } = [];
    }

    public Household? Get(long client) => database.Read(c => Get(c, client));

    internal Household? Get(SqliteConnection connection, long client)
    {
        var (today, values, clients) = (clock.Today, shops.Get().StartingValues, JsonSerializer.Serialize((long[])[client]));
        return connection.QuerySingleOrDefault<Household>(ClientsSql, new { clients }) is not { } household ? null : household with
        {
            Due =
            [
                .. Histories.Into(connection, connection.Query<DueRow>(DueStore.OfClientsSql, new { clients, today, seenSince = today }))
                    .Select(row => new DueRacket(row, row.Work(today, values)))
                    .Where(racket => racket.By.IsDue)
                    .OrderBy(racket => racket.By.DaysLeft).ThenBy(racket => racket.Racket.RacketId),
            ],
        };
    }

    /// <summary>In the order asked for, without what is due of them; those that are no clients are left out.</summary>
    public IReadOnlyList<Household> WithoutDates(IReadOnlyCollection<long> clients) =>
        database.Read(c => c.Query<Household>(ClientsSql, new { clients = JsonSerializer.Serialize(clients) }).AsList());

    private const string ClientsSql = $"""
        SELECT c.id, c.name, c.language, c.phone, c.mail, c.reminders, c.remind_by, c.quiet_months,
               (SELECT MAX(n.sent_at) FROM reminder n WHERE n.client_id = c.id AND {ReminderStore.Left}) AS reminded_at,
               {BatchStore.WaitsIn} AS batch_id
        FROM json_each(@clients) a
        JOIN client c ON c.id = a.value
        ORDER BY a.key
        """;

    /// <summary>Whether the shop's own rule lets the household be reminded again.</summary>
    public bool IsTooSoon(Household household) =>
        household.RemindedAt is { } last && clock.Now < last.AddDays(shops.Get().DaysBetweenReminders);

    /// <summary>Whether the client wants to be left alone this month.</summary>
    public bool IsQuiet(Household household) => QuietMonths.Has(household.QuietMonths, clock.Today.Month);

    /// <summary>Done carries the reminder's number.</summary>
    public Outcome Add(Who who, long client, NewReminderEntry input) => database.WriteOnceAsOwner(who, input.FormKey, clock.Now, c =>
        Get(c, client) is not { } household ? new Outcome.Absent() : WhyNot(household, input) is { } why ? new Outcome.Refused(why) : new Outcome.Done(Insert(c, household, clock.Now, input.ByPhone)));

    private Refusal? WhyNot(Household household, NewReminderEntry input)
    {
        if (household.Due.Count == 0)
            return new NothingDue();
        if (input.ByPhone)
            return null;
        if (!household.Reminders)
            return new RemindersUnwanted();
        if (household.BatchId is not null && !input.Insist)
            return new ReminderWaits();
        if (IsQuiet(household) && !input.Insist)
            return new QuietMonth();
        return IsTooSoon(household) && !input.Insist ? new RemindedLately(shops.Get().DaysBetweenReminders) : null;
    }

    /// <summary>In the caller's transaction; nothing is sent by it.</summary>
    internal static long Insert(SqliteConnection connection, Household household, DateTimeOffset now, bool byPhone)
    {
        var id = connection.ExecuteScalar<long>(AddSql, new
        {
            household.Id,
            Now = now,
            Expires = now + GoodFor,
            SentHow = byPhone ? nameof(SentHow.Phone) : null,
            SentAt = byPhone ? now : (DateTimeOffset?)null,
        });
        connection.Execute(HoldBackOlderSql, new { household.Id, id });
        foreach (var due in household.Due)
            connection.Execute(AddRacketSql, new { id, due.Racket.RacketId, due.By.Due });
        return id;
    }

    private const string AddSql = """
        INSERT INTO reminder (client_id, made_at, expires_at, sent_how, sent_at) VALUES (@Id, @Now, @Expires, @SentHow, @SentAt) RETURNING id
        """;

    /// <summary>The links of older ones are void from here on, so that their emails would open nothing.</summary>
    private const string HoldBackOlderSql = $"""
        UPDATE outbox SET state = {DeliveryStore.GivenUp}, last_error = 'A newer reminder took its place.'
        WHERE to_client_id = @Id AND state = 'Queued' AND reminder_id < @id
        """;

    private const string AddRacketSql = "INSERT INTO reminder_racket (reminder_id, racket_id, due) VALUES (@id, @RacketId, @Due)";
}
