using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>
/// A job's moves over the bench. A move starts from the state it was offered in; where the job has moved on meanwhile,
/// whoever presses second is told and nothing changes.
/// </summary>
public sealed class MoveStore(Database database, ShopClock clock)
{
    /// <summary>A racket that was still to be brought came in today.</summary>
    public Outcome Start(long id) => Move(id, [JobState.Waiting], (c, _) => c.Execute(StartSql, new { id, clock.Today }));

    private const string StartSql = $"""
        UPDATE job
        SET state = 'OnMachine', received_on = CASE WHEN {IsExpected} THEN @Today ELSE received_on END, version = version + 1
        WHERE id = @id
        """;

    private const string IsExpected = "EXISTS (SELECT 1 FROM job_request WHERE job_id = @id AND expected = 1)";

    /// <summary>A racket that was still to be brought came in today; any other stays as it is, which counts as done.</summary>
    public Outcome Here(long id) => Move(id, [JobState.Waiting], (c, _) => c.Execute(HereSql, new { id, clock.Today }));

    private const string HereSql = $"""
        UPDATE job SET received_on = @Today, version = version + 1 WHERE id = @id AND {IsExpected};
        UPDATE job_request SET expected = 0 WHERE job_id = @id;
        """;

    /// <summary>Strung: the strings before these have ended, cut out unless somebody knows better.</summary>
    public Outcome MarkStrung(long id, StrungEntry input) => Move(id, [JobState.Waiting, JobState.OnMachine], (c, job) =>
    {
        c.Execute(MarkStrungSql, new { id, input.StrungOn, StrungBy = input.StrungBy ?? "", Machine = input.Machine ?? "" });
        ReadingStore.SetFirst(c, id, input.StrungOn, input.Reading, input.InstrumentId);
        BedStore.EndFollowed(c, job.RacketId, input.OldEndedHow);
    });

    private const string MarkStrungSql = $"""
        UPDATE job
        SET state = 'Strung', strung_on = @StrungOn, strung_by = @StrungBy, machine = @Machine,
            received_on = CASE WHEN {IsExpected} THEN @StrungOn ELSE received_on END, version = version + 1
        WHERE id = @id
        """;

    public Outcome Collect(long id, CollectEntry input) => Move(id, [JobState.Strung], (c, _) =>
        c.Execute(CollectSql, new { id, input.CollectedOn, input.Paid }));

    private const string CollectSql = """
        UPDATE job
        SET state = 'Collected', collected_on = @CollectedOn, version = version + 1,
            paid_on = CASE WHEN @Paid THEN COALESCE(paid_on, @CollectedOn) ELSE paid_on END
        WHERE id = @id
        """;

    public Outcome Cancel(long id) => Move(id, [JobState.Waiting, JobState.OnMachine], (c, _) => c.Execute(CancelSql, new { id }));

    private const string CancelSql = "UPDATE job SET state = 'Cancelled', version = version + 1 WHERE id = @id";

    /// <summary>Paid on that day, or not paid after all.</summary>
    public Outcome Pay(long id, DateOnly? on) => database.Write<Outcome>(c =>
    {
        if (JobStore.Get(c, id) is not { } job)
            return new Outcome.Absent();
        if (on is null == job.PaidOn is null)
            return new Outcome.Refused(new PaidAlready(job.Ticket, job.PaidOn));
        c.Execute(PaySql, new { id, on });
        return new Outcome.Done(id);
    });

    private const string PaySql = "UPDATE job SET paid_on = @on, version = version + 1 WHERE id = @id";

    private Outcome Move(long id, JobState[] from, Action<SqliteConnection, JobRow> act) => database.Write<Outcome>(c =>
    {
        if (JobStore.Get(c, id) is not { } job)
            return new Outcome.Absent();
        if (!from.Contains(job.State))
            return new Outcome.Refused(new JobMovedOn(job.Ticket, job.State));
        act(c, job);
        return new Outcome.Done(id);
    });
}
