using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Players;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.PlayTime;

/// <summary>Hours played with a racket, noted by hand: by the shop, or by the household whose racket it is.</summary>
public sealed class HoursStore(Database database, ShopClock clock)
{
    public sealed record Racket
    {
        public long Id { get; init; }
        public int Number { get; init; }
        public string PlayerName { get; init; } = "";
        public DateOnly? StrungOn { get; init; }
    }

    public sealed record Row
    {
        public long Id { get; init; }
        public long RacketId { get; init; }
        public DateOnly PlayedOn { get; init; }
        public decimal Hours { get; init; }
        public string Note { get; init; } = "";
    }

    /// <summary>Null for a racket that is not there, or for which they may note nothing.</summary>
    public Racket? Of(Who who, long racket) => database.Read(c => c.QuerySingleOrDefault<Racket>(RacketSql, new { who.IsShop, who.ClientId, racket }));

    private const string RacketSql = $"""
        SELECT r.id, r.number, p.name AS player_name, f.strung_on
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN forecast f ON f.racket_id = r.id
        WHERE r.id = @racket AND {Who.ChangesRacket}
        """;

    private const string Columns = """
        SELECT h.id, h.racket_id, h.played_on, h.hours, h.note
        FROM logged_hours h
        JOIN racket r ON r.id = h.racket_id
        """;

    /// <summary>The newest <paramref name="most"/> that were noted since a day, the newest first.</summary>
    public IReadOnlyList<Row> Since(Who who, long racket, DateOnly? day, int most = int.MaxValue) =>
        database.Read(c => c.Query<Row>(SinceSql, new { who.IsShop, who.ClientId, racket, day, most }).AsList());

    private const string SinceSql = $"""
        {Columns}
        WHERE r.id = @racket AND (@day IS NULL OR h.played_on >= @day) AND {Who.ChangesRacket}
        ORDER BY h.played_on DESC, h.id DESC
        LIMIT @most
        """;

    public Row? Get(Who who, long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { who.IsShop, who.ClientId, id }));

    private const string GetSql = $"{Columns} WHERE h.id = @id AND {Who.ChangesRacket}";

    /// <summary>Done tells the note; a form that is sent again notes nothing more.</summary>
    public Outcome Add(Who who, long racket, HoursEntry input)
    {
        var today = clock.Today;
        return database.Write(c =>
            !c.ExecuteScalar<bool>(MaySql, new { who.IsShop, who.ClientId, racket }) ? new Outcome.Absent()
            : Fault(input, today) is { } why ? new Outcome.Refused(why)
            : FormKeys.Once(c, who, input.FormKey, clock.Now, () => Add(c, who, racket, input)));
    }

    /// <summary>A day takes what it has.</summary>
    private static Refusal? Fault(HoursEntry input, DateOnly today)
    {
        var most = LoggedHours.MostADay * input.Days;
        return input.Days is < 1 or > HoursEntry.MostDays ? new DaysUnlikely(HoursEntry.MostDays)
            : input.Hours < 0 || input.Hours > most ? new HoursUnlikely(most)
            : (input.LastDay ?? input.PlayedOn) > today ? new PlayedInFuture(today)
            : null;
    }

    private const string MaySql = $"SELECT EXISTS (SELECT 1 FROM racket r WHERE r.id = @racket AND {Who.ChangesRacket})";

    // Hours belong to weeks, and several days may lie in two: each day is a note of its own.
    private static Outcome Add(SqliteConnection connection, Who who, long racket, HoursEntry input)
    {
        if (Full(connection, racket, input) is { } full)
            return new Outcome.Refused(full);
        Outcome outcome = new Outcome.Absent();
        for (var day = 0; day < input.Days; day++)
            if (connection.ExecuteScalar<long?>(AddSql, Values(day)) is { } id)
                outcome = new Outcome.Done(id);
        return outcome;

        object Values(int day) => new { who.IsShop, who.ClientId, racket, PlayedOn = input.PlayedOn.AddDays(day), Hours = input.Hours / input.Days, Note = input.Note ?? "" };
    }

    /// <summary>The first day that would hold more than it has, with what was noted for it before: one person plays with all their rackets.</summary>
    private static DayFull? Full(SqliteConnection connection, long racket, HoursEntry input)
    {
        var room = LoggedHours.MostADay - (input.Hours / input.Days);
        var noted = connection.Query<(DateOnly Day, decimal Hours)>(NotedSql, new { racket, input.PlayedOn, LastDay = input.LastDay ?? input.PlayedOn });
        return noted.Where(day => day.Hours > room && input.Hours > 0).Select(day => new DayFull(day.Day, day.Hours)).FirstOrDefault();
    }

    private const string NotedSql = """
        SELECT played_on, SUM(hours)
        FROM logged_hours
        WHERE racket_id IN (SELECT o.id FROM racket r JOIN racket o ON o.player_id = r.player_id WHERE r.id = @racket)
          AND played_on BETWEEN @PlayedOn AND @LastDay
        GROUP BY played_on
        ORDER BY played_on
        """;

    private const string AddSql = $"""
        INSERT INTO logged_hours (racket_id, played_on, hours, note)
        SELECT r.id, @PlayedOn, @Hours, @Note FROM racket r WHERE r.id = @racket AND {Who.ChangesRacket}
        RETURNING id
        """;

    /// <summary>Takes one note back. Done tells the racket.</summary>
    public Outcome Remove(Who who, long id) => database.Write<Outcome>(c =>
        c.ExecuteScalar<long?>(RemoveSql, new { who.IsShop, who.ClientId, id }) is { } racket ? new Outcome.Done(racket) : new Outcome.Absent());

    private const string RemoveSql = $"""
        DELETE FROM logged_hours
        WHERE id = @id AND racket_id IN (SELECT r.id FROM racket r WHERE {Who.ChangesRacket})
        RETURNING racket_id
        """;
}
