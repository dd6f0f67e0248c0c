using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Deeds;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Takes back a job's last move, one step at a time. Only the shop may.</summary>
public sealed class BackStore(Database database, TimeProvider clock)
{
    /// <summary>One step back from the state the page showed; if the job has moved on, nothing changes.</summary>
    public Outcome Back(Who who, long id, JobState from) => BackTogether(who, [id], from);

    /// <summary>The same for jobs that were moved together: all of them, or none. Done carries the first.</summary>
    public Outcome BackTogether(Who who, IReadOnlyList<long> ids, JobState from)
    {
        var now = clock.GetUtcNow();
        return database.Write<Outcome>(c => Back(c, who, ids, from, now));
    }

    private static Outcome Back(SqliteConnection connection, Who who, IReadOnlyList<long> ids, JobState from, DateTimeOffset now)
    {
        var jobs = ids.Distinct().Select(id => JobStore.GetWithVisits(connection, who, id)).ToList();
        if (jobs.Count == 0 || jobs.Contains(null))
            return new Outcome.Absent();
        if (jobs.Select(job => WhyNot(job!, from)).FirstOrDefault(why => why is not null) is { } why)
            return new Outcome.Refused(why);
        foreach (var job in jobs)
        {
            Back(connection, job!, who, now);
            if (job!.State == JobState.Collected)
                PrepaidUseStore.GiveBack(connection, job.Id, who, now);
            JobDeedStore.Note(connection, who, job!.Id, JobDeed.TakenBack, now);
        }
        return new Outcome.Done(jobs[0]!.Id);
    }

    private static void Back(SqliteConnection connection, JobRow job, Who who, DateTimeOffset now)
    {
        connection.Execute((job.State, job.IsVisit) switch { (JobState.Strung, true) => UndoneSql, (JobState.Strung, _) => UnstringSql, _ => BackSql }, new { job.Id });
        // One that costs nothing was paid by being done.
        if (job.IsVisit)
            ShareStore.Settle(connection, job.Id, who, now);
        else if (job.State == JobState.Strung)
            BedStore.Reopen(connection, job.RacketId, job.StrungOn!.Value);
    }

    private static Refusal? WhyNot(JobRow job, JobState from)
    {
        if (job.State != from || from == JobState.Waiting)
            return JobMovedOn.Of(job);
        if (job is { State: JobState.Strung, EndedHow: { } how })
            return new StringsEnded(how, job.EndedOn);
        return null;
    }

    private const string BackSql = """
        UPDATE job
        SET state = CASE state WHEN 'Collected' THEN 'Strung' ELSE 'Waiting' END, collected_on = NULL, moved_at = NULL,
            started_at = CASE state WHEN 'Collected' THEN started_at END, version = version + 1
        WHERE id = @Id
        """;

    /// <summary>Who strung it, the machine and the reading stay, to be filled in again.</summary>
    private const string UnstringSql = """
        UPDATE job SET state = 'OnMachine', strung_on = NULL, strung_at = NULL, moved_at = NULL, version = version + 1 WHERE id = @Id
        """;

    private const string UndoneSql = "UPDATE job SET state = 'Waiting', done_on = NULL, moved_at = NULL, version = version + 1 WHERE id = @Id";

    /// <summary>What was moved last, and may be taken back.</summary>
    public sealed record Last
    {
        public JobState State { get; init; }

        /// <summary>All of them are visits.</summary>
        public bool IsVisit { get; init; }

        /// <summary>Several if they were handed out together.</summary>
        public IReadOnlyList<(long Id, long Ticket)> Jobs { get; init; } = [];
    }

    /// <summary>Null where nothing was moved since then, and for everybody but the shop.</summary>
    public Last? LastMove(Who who, DateTimeOffset since) => database.Read(c =>
        c.Query<(long Id, long Ticket, string State, bool IsVisit)>(LastSql, new { who.IsShop, since }).AsList() is [var first, ..] all && all.Where(job => job.State == first.State).ToList() is var jobs
            ? new Last { State = Enum.Parse<JobState>(first.State), IsVisit = jobs.All(job => job.IsVisit), Jobs = [.. jobs.Select(job => (job.Id, job.Ticket))] }
            : null);

    internal const string LastSql = """
        SELECT id, ticket, state, mains_id IS NULL
        FROM job
        WHERE moved_at = (SELECT MAX(moved_at) FROM job WHERE moved_at IS NOT NULL) AND moved_at >= @since AND state IN ('OnMachine', 'Strung', 'Collected') AND @IsShop
        ORDER BY ticket
        """;
}
