using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Tags;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Demo;

/// <summary>What only the demo does to the records.</summary>
public sealed class DemoStore(Database database, ImportStore imports)
{
    /// <summary>From the day a racket came in; without it, promises would move further ahead with every weekend.</summary>
    private const int MostDaysPromised = 3;

    /// <summary>The day that the demo's dates refer to; null if these are not the demo's records.</summary>
    public DateOnly? Day => database.Read(c => c.QuerySingleOrDefault<DateOnly?>(DaySql));

    private const string DaySql = "SELECT day FROM demo WHERE id = 1";

    /// <summary>Brings the demo's records in and marks them as such, in one transaction. Returns what prevents it.</summary>
    public ImportFinding Bring(ImportBatch batch, string formKey, DateOnly day) =>
        imports.Bring(batch, new ImportChoices { Others = OtherMatches.KeepApart }, formKey, c => c.Execute(MarkSql, new { day }));

    private const string MarkSql = "INSERT INTO demo (id, day) VALUES (1, @day)";

    /// <summary>Moves all days so that they refer to today. False if they do already.</summary>
    public bool MoveTo(DateOnly today) => database.Write(c =>
    {
        var days = today.DayNumber - c.QuerySingle<DateOnly>(DaySql).DayNumber;
        if (days == 0)
            return false;
        var by = string.Create(CultureInfo.InvariantCulture, $"{days:+0;-0} days");
        foreach (var (table, column) in DemoDates.Instants)
            c.Execute($"UPDATE {table} SET {column} = strftime('%Y-%m-%dT%H:%M:%fZ', {column}, @by)", new { by });
        foreach (var (table, columns) in DemoDates.WallTimes)
            c.Execute($"UPDATE {table} SET {string.Join(", ", columns.Select(n => $"{n} = strftime('%Y-%m-%d %H:%M', {n}, @by)"))}", new { by });
        foreach (var (table, columns) in DemoDates.Columns)
            c.Execute($"UPDATE {table} SET {string.Join(", ", columns.Select(n => $"{n} = date({n}, @by)"))}", new { by });
        return true;
    });

    /// <summary>Moves what is promised for a day on which the shop is closed to one on which it is open: moved days fall on other weekdays.</summary>
    public void PromiseOpenDays(Opening opening) => database.Write(c =>
    {
        foreach (var (id, received, promised) in c.Query<(long Id, DateOnly Received, DateOnly Promised)>(PromisedSql).Where(job => !opening.IsOpen(job.Promised)).ToList())
            c.Execute("UPDATE job SET promised_for = @day WHERE id = @id", new { id, day = opening.NextOpen(Earlier(promised, received.AddDays(MostDaysPromised))) });
    });

    /// <summary>A racket that waits is left at the first stop, one that is ready is collected there.</summary>
    public void UseStop() => database.Write(c => c.Execute(UseStopSql));

    private const string UseStopSql = """
        INSERT INTO job_stop (job_id, left_at, collect_at)
        SELECT id, CASE state WHEN 'Waiting' THEN (SELECT MIN(id) FROM stop) END, (SELECT MIN(id) FROM stop)
        FROM job
        WHERE id IN ((SELECT MAX(j.id) FROM job j WHERE j.state = 'Waiting' AND NOT EXISTS (SELECT 1 FROM job_request q WHERE q.job_id = j.id AND q.expected = 1)),
                     (SELECT MAX(id) FROM job WHERE state = 'Strung'))
        """;

    private const string PromisedSql = "SELECT id, received_on, promised_for FROM job WHERE state IN ('Waiting', 'OnMachine') AND promised_for IS NOT NULL";

    private static DateOnly Earlier(DateOnly one, DateOnly other) => one < other ? one : other;

    /// <summary>Whether the owner's present password was printed; a start that fails before that must not lose it.</summary>
    public bool IsTold => database.Read(c => c.ExecuteScalar<bool>("SELECT told FROM demo WHERE id = 1"));

    public void SetTold(bool told) => database.Write(c => c.Execute("UPDATE demo SET told = @told WHERE id = 1", new { told }));

    /// <summary>The tag to try first: that of the first racket.</summary>
    public TagCode Showcase => database.Read(c => c.QuerySingle<TagCode>(ShowcaseSql));

    public sealed record Bed
    {
        public long JobId { get; init; }
        public DateOnly StrungOn { get; init; }
        public DateOnly? EndedOn { get; init; }
        public decimal First { get; init; }
        public long InstrumentId { get; init; }
    }

    /// <summary>Measured beds of the racket to try first, the newest first.</summary>
    public IReadOnlyList<Bed> ShowcaseBeds(int most) => database.Read(c => c.Query<Bed>(BedsSql, new { Showcase, most }).AsList());

    private const string BedsSql = """
        SELECT j.id AS job_id, j.strung_on, j.ended_on, g.value AS first, g.instrument_id
        FROM tag t
        JOIN job j ON j.racket_id = t.racket_id AND j.strung_on IS NOT NULL
        JOIN reading g ON g.job_id = j.id AND g.first = 1
        WHERE t.code = @Showcase
        ORDER BY j.strung_on DESC
        LIMIT @most
        """;

    public sealed record LostRacket(TagCode Code, long RacketId, long ClientId, DateOnly Since);

    /// <summary>The lost racket; null once it was marked as back in the demo.</summary>
    public LostRacket? Lost => database.Read(c => c.QueryFirstOrDefault<(TagCode Code, long RacketId, long ClientId, DateOnly Since)?>(LostSql)) is { } row
        ? new LostRacket(row.Code, row.RacketId, row.ClientId, row.Since)
        : null;

    private const string LostSql = """
        SELECT t.code, r.id, p.client_id, r.lost_since
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN tag t ON t.racket_id = r.id AND t.state = 'Live'
        WHERE r.lost_since IS NOT NULL
        ORDER BY r.id
        LIMIT 1
        """;

    /// <summary>The client with most players, and of those with most rackets; null without any.</summary>
    public long? LargestHousehold => database.Read(c => c.QueryFirstOrDefault<long?>(LargestHouseholdSql));

    private const string LargestHouseholdSql = """
        SELECT p.client_id
        FROM player p
        JOIN racket r ON r.player_id = p.id
        GROUP BY p.client_id
        ORDER BY COUNT(DISTINCT p.id) DESC, COUNT(*) DESC, p.client_id
        LIMIT 1
        """;

    private const string ShowcaseSql = "SELECT code FROM tag WHERE state = 'Live' ORDER BY racket_id LIMIT 1";
}
