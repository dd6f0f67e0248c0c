using Dapper;
using TagPage.Core.Jobs;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Takes back a job's last move, one step at a time. Only the shop may.</summary>
public sealed class BackStore(Database database)
{
    /// <summary>One step back from the state the page showed; if the job has moved on, nothing changes.</summary>
    public Outcome Back(Who who, long id, JobState from) => database.Write<Outcome>(c =>
    {
        if (JobStore.Get(c, who, id) is not { } job)
            return new Outcome.Absent();
        if (WhyNot(job, from) is { } why)
            return new Outcome.Refused(why);
        c.Execute(job.State == JobState.Strung ? UnstringSql : BackSql, new { id });
        if (job.State == JobState.Strung)
            BedStore.Reopen(c, job.RacketId, job.StrungOn!.Value);
        return new Outcome.Done(id);
    });

    private static Refusal? WhyNot(JobRow job, JobState from)
    {
        if (job.State != from || from == JobState.Waiting)
            return new JobMovedOn(job.Ticket, job.State);
        if (job is { State: JobState.Strung, EndedHow: { } how })
            return new StringsEnded(how, job.EndedOn);
        return null;
    }

    private const string BackSql = """
        UPDATE job
        SET state = CASE state WHEN 'Collected' THEN 'Strung' ELSE 'Waiting' END, collected_on = NULL, version = version + 1
        WHERE id = @id
        """;

    /// <summary>Who strung it, the machine and the reading stay, to be filled in again.</summary>
    private const string UnstringSql = """
        UPDATE job SET state = 'OnMachine', strung_on = NULL, version = version + 1 WHERE id = @id
        """;
}
