using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Deeds;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Stops;

/// <summary>What is to be brought to the stops and fetched from them. Only the shop may.</summary>
public sealed class RoundStore(Database database, ShopClock clock)
{
    /// <summary>More rackets than this no car carries.</summary>
    public const int Most = 500;

    /// <summary>What one stop has to do with a round, each list by ticket.</summary>
    public sealed record Part
    {
        public StopRow Stop { get; init; } = new();
        public IReadOnlyList<JobRow> ToBring { get; init; } = [];
        public IReadOnlyList<JobRow> ToFetch { get; init; } = [];

        /// <summary>A client said that they leave it there; nobody knows whether they have.</summary>
        public IReadOnlyList<JobRow> Announced { get; init; } = [];

        /// <summary>Ready there, to be collected.</summary>
        public IReadOnlyList<JobRow> There { get; init; } = [];

        public bool IsEmpty => ToBring.Count + ToFetch.Count + Announced.Count + There.Count == 0;
    }

    /// <summary>In the order of the round; nothing for everybody but the shop.</summary>
    public IReadOnlyList<Part> Parts(Who who) => !who.IsShop ? [] : database.Read<IReadOnlyList<Part>>(c =>
    {
        var (stops, jobs) = (StopStore.InUse(c), c.Query<JobRow>(JobsSql, new { who.IsShop, Most }).AsList());
        return [.. stops.Select(stop => new Part
        {
            Stop = stop,
            ToBring = [.. jobs.Where(job => job.IsToBring && job.CollectAtId == stop.Id)],
            ToFetch = [.. jobs.Where(job => job.IsToFetch && job.LeftAtId == stop.Id)],
            Announced = [.. jobs.Where(job => job is { State: JobState.Waiting, Expected: true } && job.LeftAtId == stop.Id)],
            There = [.. jobs.Where(job => job is { State: JobState.Strung, BroughtAt: not null } && job.CollectAtId == stop.Id)],
        })];
    });

    internal const string JobsSql = $"""
        SELECT {JobRow.Columns}
        FROM job_card
        WHERE state IN ('Waiting', 'OnMachine', 'Strung') AND id IN (SELECT job_id FROM job_stop) AND @IsShop
        ORDER BY ticket
        LIMIT @Most
        """;

    /// <summary>From where they were left to the technician. All of them, or none.</summary>
    public Outcome Fetch(Who who, IReadOnlyList<long> ids) => Move(who, ids, JobDeed.Fetched, job => job.IsToFetch || job is { State: JobState.Waiting, Expected: true, LeftAtId: not null }, (c, job, at) =>
    {
        if (job.Expected)
            MoveStore.Receive(c, job.Id, at.Today, at.Now);
        else
            JobStopStore.Fetched(c, job.Id, at.Now);
    });

    /// <summary>To where they are collected. All of them, or none.</summary>
    public Outcome Bring(Who who, IReadOnlyList<long> ids) =>
        Move(who, ids, JobDeed.Brought, job => job.IsToBring, (c, job, at) => c.Execute(BringSql, new { job.Id, at.Now }));

    private const string BringSql = "UPDATE job_stop SET brought_at = @Now WHERE job_id = @Id";

    /// <summary>They lie where they were left, still to be fetched.</summary>
    public Outcome Unfetch(Who who, IReadOnlyList<long> ids) =>
        Move(who, ids, JobDeed.TakenBack, job => job is { State: JobState.Waiting, FetchedAt: not null }, (c, job, _) => c.Execute(UnfetchSql, new { job.Id }));

    private const string UnfetchSql = "UPDATE job_stop SET fetched_at = NULL WHERE job_id = @Id";

    /// <summary>The technician has them, still to be brought.</summary>
    public Outcome Unbring(Who who, IReadOnlyList<long> ids) =>
        Move(who, ids, JobDeed.TakenBack, job => job is { State: JobState.Strung, BroughtAt: not null }, (c, job, _) => c.Execute(UnbringSql, new { job.Id }));

    private const string UnbringSql = "UPDATE job_stop SET brought_at = NULL WHERE job_id = @Id";

    private Outcome Move(Who who, IReadOnlyList<long> ids, JobDeed deed, Func<JobRow, bool> can, Action<SqliteConnection, JobRow, (DateTimeOffset Now, DateOnly Today)> act)
    {
        (DateTimeOffset Now, DateOnly Today) at = (clock.Now, clock.Today);
        return database.WriteAsShop(who, c =>
        {
            var jobs = ids.Distinct().Take(Most).Select(id => JobStore.GetWithVisits(c, who, id)).ToList();
            if (jobs.Count == 0)
                return new Outcome.Refused(new NoRacketChosen());
            if (jobs.Contains(null))
                return new Outcome.Absent();
            if (jobs.FirstOrDefault(job => !can(job!)) is { } moved)
                return new Outcome.Refused(new RoundMovedOn(moved.Ticket));
            foreach (var job in jobs)
            {
                act(c, job!, at);
                c.Execute(SeenSql, new { job!.Id });
                JobDeedStore.Note(c, who, job.Id, deed, at.Now);
            }
            return new Outcome.Done(jobs[0]!.Id);
        });
    }

    // Whoever has the ticket's form open is told that something changed.
    private const string SeenSql = "UPDATE job SET version = version + 1 WHERE id = @Id";

    /// <summary>What was moved last on the round, and may be taken back.</summary>
    public sealed record Last
    {
        public JobDeed Deed { get; init; }
        public string Stop { get; init; } = "";
        public IReadOnlyList<(long Id, long Ticket)> Jobs { get; init; } = [];
    }

    /// <summary>Null where nothing was since then, and for everybody but the shop.</summary>
    public Last? LastMove(Who who, DateTimeOffset since) => database.Read(c =>
        c.Query<(long Id, long Ticket, string Deed, string Stop)>(LastSql, new { who.IsShop, since }).AsList() is [var first, ..] jobs
            ? new Last { Deed = Enum.Parse<JobDeed>(first.Deed), Stop = first.Stop, Jobs = [.. jobs.Select(job => (job.Id, job.Ticket))] }
            : null);

    internal const string LastSql = """
        WITH moved AS (
          SELECT s.job_id, 'Fetched' AS deed, s.fetched_at AS at, s.left_at AS stop_id FROM job_stop s JOIN job j ON j.id = s.job_id WHERE s.fetched_at >= @since AND j.state = 'Waiting'
          UNION ALL
          SELECT s.job_id, 'Brought', s.brought_at, s.collect_at FROM job_stop s JOIN job j ON j.id = s.job_id WHERE s.brought_at >= @since AND j.state = 'Strung')
        SELECT j.id, j.ticket, m.deed, t.name
        FROM moved m
        JOIN job j ON j.id = m.job_id
        JOIN stop t ON t.id = m.stop_id
        WHERE m.at = (SELECT MAX(at) FROM moved) AND @IsShop
        ORDER BY j.ticket
        """;
}
