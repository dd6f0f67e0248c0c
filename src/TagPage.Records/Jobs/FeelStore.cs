using Dapper;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>How a string bed felt to the player.</summary>
public enum FeelBed { TooStiff, Right, TooLoose }

/// <summary>What players say about a stringing after playing with it; the bench reads it at the next one.</summary>
public sealed class FeelStore(Database database, ShopClock clock)
{
    public const int LongestNote = 400;

    public sealed record Row
    {
        public long JobId { get; init; }
        public long Ticket { get; init; }
        public long RacketId { get; init; }
        public DateOnly StrungOn { get; init; }
        public FeelBed? Bed { get; init; }
        public bool MoreSpin { get; init; }
        public bool MoreControl { get; init; }
        public bool MoreComfort { get; init; }
        public string Note { get; init; } = "";
        public DateOnly? SaidOn { get; init; }
    }

    /// <summary>A stringing of the client's, with what was said about it so far.</summary>
    public Row? Get(Who who, long job) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { who.ClientId, job }));

    private const string GetSql = $"""
        {Columns}
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE j.id = @job AND p.client_id = @ClientId AND j.strung_on IS NOT NULL
        """;

    private const string Columns = """
        SELECT j.id AS job_id, j.ticket, j.racket_id, j.strung_on, f.bed, f.more_spin, f.more_control, f.more_comfort, COALESCE(f.note, '') AS note, f.said_on
        FROM job j
        LEFT JOIN feel f ON f.job_id = j.id
        """;

    /// <summary>Only the household says how it felt.</summary>
    public Outcome Save(Who who, long job, Row said)
    {
        var today = clock.Today;
        return database.Write<Outcome>(c => c.Execute(SaveSql, new
        {
            who.ClientId,
            job,
            Bed = said.Bed.ToString(),
            said.MoreSpin,
            said.MoreControl,
            said.MoreComfort,
            said.Note,
            today,
        }) == 1 ? new Outcome.Done(job) : new Outcome.Absent());
    }

    private const string SaveSql = """
        INSERT INTO feel (job_id, bed, more_spin, more_control, more_comfort, note, said_on)
        SELECT j.id, @Bed, @MoreSpin, @MoreControl, @MoreComfort, @Note, @today
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE j.id = @job AND p.client_id = @ClientId AND j.strung_on IS NOT NULL
        ON CONFLICT (job_id) DO UPDATE
        SET bed = excluded.bed, more_spin = excluded.more_spin, more_control = excluded.more_control, more_comfort = excluded.more_comfort,
            note = excluded.note, said_on = excluded.said_on
        """;

    /// <summary>For the bench: the last thing said about a racket, not counting a stringing that is being looked at.</summary>
    public Row? Last(long racket, long? exceptJob = null) => database.Read(c => c.QueryFirstOrDefault<Row>(LastSql, new { racket, exceptJob }));

    private const string LastSql = $"""
        {Columns}
        WHERE j.racket_id = @racket AND f.job_id IS NOT NULL AND j.id IS NOT @exceptJob
        ORDER BY j.strung_on DESC, j.id DESC
        LIMIT 1
        """;
}
