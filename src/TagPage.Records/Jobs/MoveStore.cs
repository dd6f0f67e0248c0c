using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Deeds;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>
/// A job's moves at the bench, which only the shop may make. A move starts from the state it was offered in; if the job has
/// moved on meanwhile, whoever presses second is told and nothing changes.
/// </summary>
public sealed class MoveStore(Database database, ShopClock clock)
{
    /// <summary>A racket that was still to be brought came in today.</summary>
    public Outcome Start(Who who, long id) => Move(who, id, [JobState.Waiting], JobDeed.Started, (c, _) =>
    {
        JobStopStore.Fetched(c, id, clock.Now);
        c.Execute(StartSql, new { id, clock.Now, clock.Today });
        return null;
    });

    private const string StartSql = $"""
        UPDATE job
        SET state = 'OnMachine', started_at = @Now, moved_at = @Now, received_on = CASE WHEN {IsExpected} THEN @Today ELSE received_on END, version = version + 1
        WHERE id = @id
        """;

    private const string IsExpected = "EXISTS (SELECT 1 FROM job_request WHERE job_id = @id AND expected = 1)";

    /// <summary>A racket that was still to be brought came in today; any other stays as it is: idempotent.</summary>
    public Outcome Receive(Who who, long id) => Move(who, id, [JobState.Waiting], JobDeed.Came, (c, _) =>
    {
        Receive(c, id, clock.Today, clock.Now);
        return null;
    });

    /// <summary>In the caller's transaction, for a job that is known to wait.</summary>
    internal static void Receive(SqliteConnection connection, long id, DateOnly on, DateTimeOffset now)
    {
        if (connection.ExecuteScalar<bool>($"SELECT {IsExpected}", new { id }))
            JobStopStore.Fetched(connection, id, now);
        connection.Execute(ReceiveSql, new { id, Today = on });
    }

    private const string ReceiveSql = $"""
        UPDATE job SET received_on = @Today, version = version + 1 WHERE id = @id AND {IsExpected};
        UPDATE job_request SET expected = 0 WHERE job_id = @id;
        """;

    /// <summary>Strung: the strings before these have ended, cut out unless somebody knows better.</summary>
    public Outcome MarkStrung(Who who, long id, StrungEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return Move(who, id, [JobState.Waiting, JobState.OnMachine], JobDeed.Strung, (c, job) =>
        {
            if (input.Days(job).Faults(today).FirstOrDefault() is { } why)
                return why;
            if (ReadingStore.FirstFault(c, input.Reading, input.InstrumentId) is { } fault)
                return fault;
            JobStopStore.Fetched(c, id, now);
            c.Execute(MarkStrungSql, new { id, input.StrungOn, StrungBy = input.StrungBy ?? "", Machine = input.Machine ?? "", Now = now, Today = today });
            ReadingStore.SetFirst(c, id, input.StrungOn, input.Reading, input.InstrumentId);
            BedStore.EndFollowed(c, job.RacketId, input.OldEndedHow);
            return null;
        });
    }

    private const string MarkStrungSql = $"""
        UPDATE job
        SET state = 'Strung', strung_on = @StrungOn, strung_by = @StrungBy, machine = @Machine,
            strung_at = CASE WHEN @StrungOn = @Today AND started_at IS NOT NULL THEN @Now END, moved_at = @Now,
            received_on = CASE WHEN {IsExpected} THEN @StrungOn ELSE received_on END, version = version + 1
        WHERE id = @id
        """;

    public Outcome Collect(Who who, long id, HandOutEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return Move(who, id, [JobState.Strung], JobDeed.HandedOut, (c, job) =>
        {
            if (new JobDays { StrungOn = job.ReadyOn, CollectedOn = input.CollectedOn }.Faults(today).FirstOrDefault() is { } why)
                return why;
            if (input.Payment is { } payment && job.PaidOn is null && PaymentLineStore.Pay(c, ShareStore.Of(c, id)!, payment, who, (now, today)) is { } unpaid)
                return unpaid;
            Collect(c, id, input.CollectedOn, now);
            return null;
        }, orVisit: true);
    }

    /// <summary>In the caller's transaction, for a job that is known to be ready.</summary>
    internal static void Collect(SqliteConnection connection, long id, DateOnly on, DateTimeOffset now) => connection.Execute(CollectSql, new { id, CollectedOn = on, Now = now });

    private const string CollectSql = """
        UPDATE job
        SET state = 'Collected', collected_on = @CollectedOn, moved_at = @Now, version = version + 1
        WHERE id = @id
        """;

    /// <summary>What was paid for it becomes credit.</summary>
    public Outcome Cancel(Who who, long id)
    {
        var now = clock.Now;
        return Move(who, id, [JobState.Waiting, JobState.OnMachine], JobDeed.Cancelled, (c, _) =>
        {
            PrepaidUseStore.GiveBack(c, id, who, now);
            c.Execute(CancelSql, new { id });
            ShareStore.Settle(c, id, who, now);
            return null;
        }, orVisit: true);
    }

    private const string CancelSql = "UPDATE job SET state = 'Cancelled', moved_at = NULL, version = version + 1 WHERE id = @id";

    /// <param name="who">Who acts.</param>
    /// <param name="id">The job's.</param>
    /// <param name="from">The states in which this can be done.</param>
    /// <param name="deed">What it is called.</param>
    /// <param name="act">Does it, or says why not.</param>
    /// <param name="orVisit">It can be done to visits, too.</param>
    private Outcome Move(Who who, long id, JobState[] from, JobDeed deed, Func<SqliteConnection, JobRow, Refusal?> act, bool orVisit = false)
    {
        var now = clock.Now;
        return database.Write<Outcome>(c =>
        {
            if ((orVisit ? JobStore.GetWithVisits(c, who, id) : JobStore.Get(c, who, id)) is not { } job)
                return new Outcome.Absent();
            if ((from.Contains(job.State) ? act(c, job) : JobMovedOn.Of(job)) is { } why)
                return new Outcome.Refused(why);
            JobDeedStore.Note(c, who, id, deed, now);
            return new Outcome.Done(id);
        });
    }
}
