using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Deeds;
using TagPage.Records.Money;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Tells clients that rackets are ready to be collected. Only the shop may.</summary>
public sealed class ReadyStore(Database database, OutboxStore outbox, IJobMails mails, ShopStore shops, ShopClock clock)
{
    /// <summary>Rackets that an email says are ready, with what of their price is open now.</summary>
    public IReadOnlyList<JobRow> ToldBy(Who who, long mail) => database.Read(c => c.Query<JobRow>(ToldBySql, new { mail, who.IsShop }).AsList());

    private const string ToldBySql = $"SELECT {JobRow.Columns} FROM job_card WHERE id IN (SELECT id FROM job WHERE told_mail_id = @mail) AND @IsShop ORDER BY ticket";

    /// <summary>Puts the email into the outbox, once for each time the racket became ready.</summary>
    public Outcome Tell(Who who, long id)
    {
        var now = clock.Now;
        return database.Write<Outcome>(c =>
        {
            if (JobStore.GetWithVisits(c, who, id) is not { } job)
                return new Outcome.Absent();
            if (job.State != JobState.Strung)
                return new Outcome.Refused(new NotReady());
            if (job.ToldReadyAt is not null)
                return new Outcome.Refused(new ToldReadyAlready());
            if (job.ClientMail is null || shops.Get().Mail is null)
                return new Outcome.Refused(new NoMailAddress());
            Tell(c, who, [job], now);
            return new Outcome.Done(id);
        });
    }

    /// <summary>
    /// One email to each client of the party for all of their rackets that are ready and that they were not told of. Whoever has
    /// no address is left out. Done carries how many rackets were told of.
    /// </summary>
    public Outcome TellAll(Who who, Party party)
    {
        var now = clock.Now;
        return database.WriteAsShop(who, c =>
        {
            var ready = TogetherStore.Jobs(c, who, party).Where(job => job.State == JobState.Strung).ToList();
            var untold = ready.Where(job => job.ToldReadyAt is null).ToList();
            if (untold.Count == 0)
                return new Outcome.Refused(ready.Count == 0 ? new NotReady() : new ToldReadyAlready());
            var reached = shops.Get().Mail is null ? [] : untold.Where(job => job.ClientMail is not null).ToList();
            if (reached.Count == 0)
                return new Outcome.Refused(new NoMailAddress());
            foreach (var household in reached.GroupBy(job => job.ClientId))
                Tell(c, who, [.. household], now);
            return new Outcome.Done(reached.Count);
        });
    }

    private void Tell(SqliteConnection connection, Who who, IReadOnlyList<JobRow> jobs, DateTimeOffset now)
    {
        var mail = mails.Ready(jobs);
        connection.Execute(LetGoSql, jobs.Select(job => new { job.Id }));
        var sent = outbox.Queue(connection, new NewMail(MailKind.ClientNotice, jobs[0].ClientId, mail.Subject, mail.Body));
        connection.Execute(TellSql, jobs.Select(job => new { job.Id, sent, now }));
        foreach (var job in jobs)
            JobDeedStore.Note(connection, who, job.Id, JobDeed.Told, now);
    }

    // The new one takes the place of an email that was given up.
    private const string LetGoSql = "UPDATE outbox SET let_go = 1 WHERE state = 'Failed' AND id = (SELECT told_mail_id FROM job WHERE id = @Id)";

    private const string TellSql = "UPDATE job SET told_ready_at = @now, told_mail_id = @sent, version = version + 1 WHERE id = @Id";
}
