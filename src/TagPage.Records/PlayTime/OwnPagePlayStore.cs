using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Strings;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.PlayTime;

/// <summary>Hours, pauses and readings that a household notes for its own rackets.</summary>
public sealed class OwnPagePlayStore(Database database, ShopClock clock)
{
    /// <summary>What readings of clients are taken on. They are never compared with those of the shop's instruments.</summary>
    public const string Instrument = "Clients’ phones";

    /// <summary>The lowest and the highest pitch of a strung bed that is taken, in Hz.</summary>
    public const int LowestHz = 300, HighestHz = 1400;

    public sealed record Logged
    {
        public long Id { get; init; }
        public DateOnly PlayedOn { get; init; }
        public double Hours { get; init; }
    }

    public sealed record Paused
    {
        public long Id { get; init; }
        public DateOnly FromOn { get; init; }
        public DateOnly? ToOn { get; init; }
    }

    public sealed record Pitch
    {
        public DateOnly TakenOn { get; init; }
        public double Value { get; init; }
    }

    public IReadOnlyList<Logged> LastHours(long client, long racket) => database.Read(c => c.Query<Logged>(LastHoursSql, new { client, racket }).ToList());

    private const string LastHoursSql = """
        SELECT h.id, h.played_on, h.hours
        FROM logged_hours h
        JOIN racket r ON r.id = h.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE r.id = @racket AND p.client_id = @client
        ORDER BY h.played_on DESC, h.id DESC
        LIMIT 5
        """;

    /// <summary>Played today; a form that is sent again notes nothing more.</summary>
    public Outcome AddHours(long client, long racket, double hours, string formKey)
    {
        var today = clock.Today;
        return hours is not (> 0 and <= 24) ? new Outcome.Refused(new HoursUnlikely()) : database.Write(c => FormKeys.Once(c, formKey, clock.Now, () =>
            c.Execute(AddHoursSql, new { client, racket, hours, today }) == 1 ? (Outcome)new Outcome.Done(racket) : new Outcome.Absent()));
    }

    private const string AddHoursSql = """
        INSERT INTO logged_hours (racket_id, played_on, hours)
        SELECT r.id, @today, @hours
        FROM racket r
        JOIN player p ON p.id = r.player_id
        WHERE r.id = @racket AND p.client_id = @client AND r.state <> 'Sold'
        """;

    /// <summary>Takes one note of hours back. Done tells the racket.</summary>
    public Outcome RemoveHours(long client, long id) => database.Write<Outcome>(c =>
        c.ExecuteScalar<long?>(RemoveHoursSql, new { client, id }) is { } racket ? new Outcome.Done(racket) : new Outcome.Absent());

    private const string RemoveHoursSql = """
        DELETE FROM logged_hours
        WHERE id = @id AND racket_id IN (SELECT r.id FROM racket r JOIN player p ON p.id = r.player_id WHERE p.client_id = @client AND r.state <> 'Sold')
        RETURNING racket_id
        """;

    /// <summary>The pause the player is in today, or null.</summary>
    public Paused? PauseNow(long client, long player) => database.Read(c => c.QueryFirstOrDefault<Paused>(PauseNowSql, new { client, player, clock.Today }));

    private const string PauseNowSql = """
        SELECT a.id, a.from_on, a.to_on
        FROM pause a
        JOIN player p ON p.id = a.player_id
        WHERE p.id = @player AND p.client_id = @client AND a.from_on <= @Today AND (a.to_on IS NULL OR a.to_on >= @Today)
        ORDER BY a.to_on IS NOT NULL, a.id DESC
        LIMIT 1
        """;

    /// <summary>From today on, with no end yet. In a pause already is as good.</summary>
    public Outcome Pause(long client, long player)
    {
        var today = clock.Today;
        return database.Write<Outcome>(c =>
        {
            if (!IsMine(c, client, player))
                return new Outcome.Absent();
            c.Execute(PauseSql, new { player, today });
            return new Outcome.Done(player);
        });
    }

    private const string PauseSql = """
        INSERT INTO pause (player_id, from_on)
        SELECT @player, @today
        WHERE NOT EXISTS (SELECT 1 FROM pause WHERE player_id = @player AND from_on <= @today AND (to_on IS NULL OR to_on >= @today))
        """;

    /// <summary>Playing again today: yesterday was the last day of the pause, and one that began today never was.</summary>
    public Outcome Resume(long client, long player)
    {
        var today = clock.Today;
        return database.Write<Outcome>(c =>
        {
            if (!IsMine(c, client, player))
                return new Outcome.Absent();
            c.Execute(ResumeSql, new { player, today, Yesterday = today.AddDays(-1) });
            return new Outcome.Done(player);
        });
    }

    private const string ResumeSql = """
        DELETE FROM pause WHERE player_id = @player AND from_on = @today;
        UPDATE pause SET to_on = @Yesterday WHERE player_id = @player AND from_on < @today AND (to_on IS NULL OR to_on >= @today);
        """;

    private static bool IsMine(SqliteConnection connection, long client, long player) =>
        connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM player WHERE id = @player AND client_id = @client)", new { client, player });

    /// <summary>What the household measured on the strings that are in the racket, oldest first.</summary>
    public IReadOnlyList<Pitch> Pitches(long client, long job) => database.Read(c => c.Query<Pitch>(PitchesSql, new { client, job, Instrument }).ToList());

    private const string PitchesSql = """
        SELECT g.taken_on, g.value
        FROM reading g
        JOIN instrument i ON i.id = g.instrument_id
        JOIN job j ON j.id = g.job_id
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE j.id = @job AND p.client_id = @client AND i.name = @Instrument
        ORDER BY g.taken_on, g.id
        """;

    /// <summary>A pitch of the strings that are in the racket, taken today; a form that is sent again keeps nothing more.</summary>
    public Outcome AddPitch(long client, long racket, decimal hertz, string formKey)
    {
        var today = clock.Today;
        return database.Write(c => FormKeys.Once(c, formKey, clock.Now, () =>
        {
            if (OwnPageRacketStore.Get(c, client, racket) is not { IsMine: true, BedId: { } job, EndedOn: null })
                return (Outcome)new Outcome.Absent();
            c.Execute("INSERT INTO instrument (name, scale) VALUES (@Instrument, @Scale) ON CONFLICT DO NOTHING", new { Instrument, Scale = nameof(ReadingScale.Hertz) });
            c.Execute(AddPitchSql, new { job, today, Instrument, hertz });
            return new Outcome.Done(racket);
        }));
    }

    private const string AddPitchSql = """
        INSERT INTO reading (job_id, first, taken_on, instrument_id, value)
        SELECT @job, 0, @today, id, @hertz FROM instrument WHERE name = @Instrument
        """;
}
