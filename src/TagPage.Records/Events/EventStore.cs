using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>Events with a desk: the shop sets them up, its helpers work there.</summary>
public sealed class EventStore(Database database, ShopStore shops, TimeProvider clock)
{
    public sealed record Line
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public string Place { get; init; } = "";
        public DateOnly FromOn { get; init; }
        public DateOnly ToOn { get; init; }
        public DateTimeOffset? ClosedAt { get; init; }
        public int Rackets { get; init; }
        public int Open { get; init; }
    }

    /// <summary>The newest first.</summary>
    public IReadOnlyList<Line> List() => database.Read(c => c.Query<Line>(ListSql).ToList());

    private const string ListSql = """
        SELECT v.id, v.name, v.place, v.from_on, v.to_on, v.closed_at,
               (SELECT COUNT(*) FROM event_entry e WHERE e.event_id = v.id) AS rackets,
               (SELECT COUNT(*) FROM event_entry e JOIN job j ON j.id = e.job_id
                WHERE e.event_id = v.id AND j.state IN ('Waiting', 'OnMachine', 'Strung')) AS open
        FROM event v
        ORDER BY v.from_on DESC, v.id DESC
        LIMIT 200
        """;

    /// <summary>For whoever works at its desk; null for everybody else.</summary>
    public EventRow? Get(Who who, long id) => database.Read(c => Get(c, who, id));

    internal static EventRow? Get(SqliteConnection connection, Who who, long id) =>
        connection.QuerySingleOrDefault<EventRow>(GetSql, new { who.IsShop, who.EventId, id });

    private const string GetSql = $"SELECT {EventRow.Columns} FROM event v WHERE v.id = @id AND {Who.WorksAtDesk}";

    public Outcome Add(Who who, EventEntry input) => database.WriteOnceAsOwner(who, input.FormKey, clock.GetUtcNow(), c =>
        WhyNot(input) is { } why ? new Outcome.Refused(why) : new Outcome.Done(c.ExecuteScalar<long>(AddSql, Values(0, input))));

    private const string AddSql = """
        INSERT INTO event (name, place, from_on, to_on, label_tape, price_own_minor, price_desk_minor)
        VALUES (@Name, @Place, @FromOn, @ToOn, @LabelTape, @PriceOwn, @PriceDesk)
        RETURNING id
        """;

    public Outcome Change(Who who, long id, EventEntry input) => database.WriteAsOwner(who, c =>
    {
        if (Get(c, who, id) is null)
            return new Outcome.Absent();
        if (WhyNot(input) is { } why)
            return new Outcome.Refused(why);
        return c.Execute(ChangeSql, Values(id, input)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE event
        SET name = @Name, place = @Place, from_on = @FromOn, to_on = @ToOn, label_tape = @LabelTape,
            price_own_minor = @PriceOwn, price_desk_minor = @PriceDesk, version = version + 1
        WHERE id = @Id AND version = @Version
        """;

    /// <summary>The event is over: its helpers are signed out. Not while rackets of it are still at the desk.</summary>
    public Outcome Close(Who who, long id) => database.WriteAsOwner(who, c =>
    {
        if (Get(c, who, id) is null)
            return new Outcome.Absent();
        if (c.Query<int>(StillThereSql, new { id }).ToList() is { Count: > 0 } numbers)
            return new Outcome.Refused(new RacketsStillThere(numbers));
        c.Execute(CloseSql, new { id, Now = clock.GetUtcNow() });
        return new Outcome.Done(id);
    });

    private const string StillThereSql = """
        SELECT e.number FROM event_entry e JOIN job j ON j.id = e.job_id
        WHERE e.event_id = @id AND j.state IN ('Waiting', 'OnMachine', 'Strung')
        ORDER BY e.number
        """;

    private const string CloseSql = """
        UPDATE event SET closed_at = COALESCE(closed_at, @Now), secret = lower(hex(randomblob(16))), version = version + 1 WHERE id = @id;
        DELETE FROM event_session WHERE event_id = @id;
        """;

    public Outcome Reopen(Who who, long id) => database.WriteAsOwner(who, c =>
        c.Execute("UPDATE event SET closed_at = NULL, version = version + 1 WHERE id = @id", new { id }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());

    /// <summary>All helpers are signed out, and the link they came by is void.</summary>
    public Outcome SignHelpersOut(Who who, long id) => database.WriteAsOwner(who, c =>
        c.Execute(SignHelpersOutSql, new { id }) > 0 ? new Outcome.Done(id) : new Outcome.Absent());

    private const string SignHelpersOutSql = """
        UPDATE event SET secret = lower(hex(randomblob(16))) WHERE id = @id;
        DELETE FROM event_session WHERE event_id = @id;
        """;

    private Refusal? WhyNot(EventEntry input)
    {
        if ((input.ToOn ?? input.FromOn) is var last && (last < input.FromOn || last.DayNumber - input.FromOn.DayNumber >= EventEntry.MostDays))
            return new EventDaysUnfit(EventEntry.MostDays);
        if (input.PriceOwn is not null && Minor(input.PriceOwn) is null)
            return new EventPriceUnread(nameof(input.PriceOwn), shops.Get());
        return input.PriceDesk is not null && Minor(input.PriceDesk) is null ? new EventPriceUnread(nameof(input.PriceDesk), shops.Get()) : null;
    }

    private long? Minor(decimal? price) => price is { } amount ? Currencies.ToMinor(amount, shops.Get().Currency) : null;

    private object Values(long id, EventEntry input) => new
    {
        Id = id,
        input.Version,
        input.Name,
        Place = input.Place ?? "",
        input.FromOn,
        ToOn = input.ToOn ?? input.FromOn,
        LabelTape = input.LabelTape ?? "",
        PriceOwn = Minor(input.PriceOwn),
        PriceDesk = Minor(input.PriceDesk),
    };
}
