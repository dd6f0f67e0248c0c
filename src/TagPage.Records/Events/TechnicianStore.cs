using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.EventDesk;
using TagPage.Core.Sports;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>Who strings at an event and when. The shop says so; that somebody is away or takes a break is said at the desk.</summary>
public sealed class TechnicianStore(Database database, ShopClock clock)
{
    private const int LongestBreak = 240;

    internal static List<TechnicianRow> Of(SqliteConnection connection, long eventId)
    {
        var hours = connection.Query<Times>(HoursSql, new { eventId }).ToLookup(time => time.TechnicianId);
        var timed = connection.Query<Timed>(TimedSql, new { eventId }).ToLookup(time => time.TechnicianId);
        return [.. connection.Query<TechnicianRow>(OfSql, new { eventId }).Select(row => row with
        {
            Hours = WorkTime.Between(hours[row.Id].Where(time => !time.IsBreak).Select(time => time.Work), hours[row.Id].Where(time => time.IsBreak).Select(time => time.Work)),
            Breaks = [.. hours[row.Id].Where(time => time.IsBreak).Select(time => time.Work)],
            Minutes = timed[row.Id].GroupBy(time => time.Sport).ToDictionary(sport => sport.Key, sport => LearnedMinutes.From(sport.Select(time => time.Minutes))),
        })];
    }

    private sealed record Times
    {
        public long TechnicianId { get; init; }
        public bool IsBreak { get; init; }
        public DateTime FromAt { get; init; }
        public DateTime ToAt { get; init; }

        public WorkTime Work => new(FromAt, ToAt);
    }

    private sealed record Timed
    {
        public long TechnicianId { get; init; }
        public Sport Sport { get; init; }
        public double Minutes { get; init; }
    }

    private const string OfSql = "SELECT id, name, machine, away FROM event_technician WHERE event_id = @eventId ORDER BY id";

    private const string HoursSql = """
        SELECT h.technician_id, h.is_break, h.from_at, h.to_at
        FROM event_hours h JOIN event_technician t ON t.id = h.technician_id
        WHERE t.event_id = @eventId
        ORDER BY h.from_at
        """;

    // The same person at earlier events is known by name; their last few hundred rackets say how quick they are.
    private const string TimedSql = """
        SELECT t.id AS technician_id, r.sport, (unixepoch(e.strung_at) - unixepoch(e.started_at)) / 60.0 AS minutes
        FROM event_technician t
        JOIN event_technician s ON s.name = t.name COLLATE NOCASE
        JOIN event_entry e ON e.technician_id = s.id AND e.strung_at IS NOT NULL AND e.started_at IS NOT NULL
        JOIN job j ON j.id = e.job_id
        JOIN racket r ON r.id = j.racket_id
        WHERE t.event_id = @eventId
        ORDER BY e.strung_at DESC
        LIMIT 2000
        """;

    public Outcome Add(Who who, long eventId, TechnicianEntry input) => database.WriteOnceAsOwner(who, input.FormKey, clock.Now, c =>
    {
        if (EventStore.Get(c, who, eventId) is not { } desk)
            return new Outcome.Absent();
        var (hours, why) = WorkHours.Read(desk, input);
        if (hours is null)
            return new Outcome.Refused(why!);
        return new Outcome.Done(DeskChange.Make(c, who, desk, clock.Minute, () =>
        {
            var id = c.ExecuteScalar<long>(AddSql, new { eventId, input.Name, Machine = input.Machine ?? "" });
            SetHours(c, id, hours);
            return id;
        }));
    });

    private const string AddSql = "INSERT INTO event_technician (event_id, name, machine) VALUES (@eventId, @Name, @Machine) RETURNING id";

    /// <summary>Name, machine, and the hours of every day; breaks that were taken in between go.</summary>
    public Outcome Change(Who who, long eventId, long id, TechnicianEntry input) => database.WriteAsOwner(who, c =>
    {
        if (EventStore.Get(c, who, eventId) is not { } desk || !IsThere(c, eventId, id))
            return new Outcome.Absent();
        var (hours, why) = WorkHours.Read(desk, input);
        if (hours is null)
            return new Outcome.Refused(why!);
        return new Outcome.Done(DeskChange.Make(c, who, desk, clock.Minute, () =>
        {
            c.Execute(ChangeSql, new { id, input.Name, Machine = input.Machine ?? "" });
            SetHours(c, id, hours);
            return id;
        }));
    });

    private const string ChangeSql = """
        UPDATE event_technician SET name = @Name, machine = @Machine WHERE id = @id;
        DELETE FROM event_hours WHERE technician_id = @id;
        """;

    private static void SetHours(SqliteConnection connection, long id, IReadOnlyDictionary<DateOnly, IReadOnlyList<OpeningSpan>> hours) =>
        connection.Execute(HourSql, from day in hours
                                    let midnight = day.Key.ToDateTime(TimeOnly.MinValue)
                                    from span in day.Value
                                    select new { id, From = midnight.AddMinutes(span.OpensAt), To = midnight.AddMinutes(span.ClosesAt) });

    private const string HourSql = "INSERT INTO event_hours (technician_id, is_break, from_at, to_at) VALUES (@id, 0, @From, @To)";

    /// <summary>The machine broke or they left, or they are back.</summary>
    public Outcome SetAway(Who who, long eventId, long id, bool away) => AtDesk(who, eventId, id, c =>
        c.Execute("UPDATE event_technician SET away = @away WHERE id = @id", new { id, away }));

    /// <summary>A break of so many minutes that begins now; none within one.</summary>
    public Outcome Pause(Who who, long eventId, long id, int minutes) => AtDesk(who, eventId, id, c =>
        c.Execute(PauseSql, new { id, Now = clock.Minute, To = clock.Minute.AddMinutes(Math.Clamp(minutes, 1, LongestBreak)) }));

    private const string PauseSql = """
        INSERT INTO event_hours (technician_id, is_break, from_at, to_at)
        SELECT @id, 1, @Now, @To
        WHERE NOT EXISTS (SELECT 1 FROM event_hours WHERE technician_id = @id AND is_break = 1 AND from_at <= @Now AND to_at > @Now)
        """;

    /// <summary>They are back: a break that runs, also one between their hours, is over now.</summary>
    public Outcome EndBreak(Who who, long eventId, long id) => AtDesk(who, eventId, id, c =>
        c.Execute(EndBreakSql, new { id, Now = clock.Minute, clock.Today }));

    private const string EndBreakSql = """
        DELETE FROM event_hours WHERE technician_id = @id AND is_break = 1 AND from_at = @Now;
        UPDATE event_hours SET to_at = @Now WHERE technician_id = @id AND is_break = 1 AND from_at < @Now AND to_at > @Now;
        UPDATE event_hours SET from_at = @Now
        WHERE id = (SELECT id FROM event_hours WHERE technician_id = @id AND is_break = 0 AND from_at > @Now AND date(from_at) = @Today ORDER BY from_at LIMIT 1)
          AND EXISTS (SELECT 1 FROM event_hours WHERE technician_id = @id AND is_break = 0 AND to_at <= @Now AND date(to_at) = @Today)
          AND NOT EXISTS (SELECT 1 FROM event_hours WHERE technician_id = @id AND is_break = 0 AND from_at <= @Now AND to_at > @Now)
        """;

    private Outcome AtDesk(Who who, long eventId, long id, Action<SqliteConnection> act) => database.AtDesk(who, eventId, (c, desk) =>
    {
        if (!IsThere(c, eventId, id))
            return new Outcome.Absent();
        DeskChange.Make(c, who, desk, clock.Minute, () =>
        {
            act(c);
            return id;
        });
        return new Outcome.Done(id);
    });

    private static bool IsThere(SqliteConnection connection, long eventId, long id) =>
        connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM event_technician WHERE id = @id AND event_id = @eventId)", new { id, eventId });
}
