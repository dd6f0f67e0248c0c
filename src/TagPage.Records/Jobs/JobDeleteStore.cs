using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Money;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>
/// Deletes a ticket that was written by mistake, as long as nothing stands on it: strings that went in, readings, a payment, photos, or a
/// client's wish. Only the owner may.
/// </summary>
public sealed class JobDeleteStore(Database database)
{
    /// <summary>Done tells the racket.</summary>
    public Outcome Delete(Who who, long id) => database.WriteAsOwner(who, c =>
    {
        if (JobStore.Get(c, who, id) is not { } job)
            return new Outcome.Absent();
        if (WhyNot(c, job) is { } why)
            return new Outcome.Refused(why);
        c.Execute(DeleteSql, new { id, job.Ticket });
        return new Outcome.Done(job.RacketId);
    });

    /// <summary>Why a ticket can no longer be deleted; null where it can.</summary>
    public Refusal? WhyNot(JobRow job) => database.Read(c => WhyNot(c, job));

    private static Refusal? WhyNot(SqliteConnection connection, JobRow job) =>
        job.StrungOn is { } strung ? new StringsWentIn(strung)
        : connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM reading WHERE job_id = @Id)", new { job.Id }) ? new ReadingsOnIt()
        : job.PaidOn is { } paid ? new PaidFor(paid)
        : connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM payment_share WHERE job_id = @Id)", new { job.Id }) ? new PaymentsOnIt()
        : connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM photo WHERE job_id = @Id)", new { job.Id }) ? new PhotosOnIt()
        : job.AskedIn is not null ? new ClientAskedFor(job.Client)
        : null;

    private const string DeleteSql = """
        INSERT INTO deleted_ticket (ticket) VALUES (@Ticket) ON CONFLICT DO NOTHING;
        DELETE FROM job WHERE id = @id;
        """;
}
