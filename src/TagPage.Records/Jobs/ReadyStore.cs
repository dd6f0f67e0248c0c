using Dapper;
using TagPage.Core.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Tells the client that a racket is ready to be collected. Only the shop may.</summary>
public sealed class ReadyStore(Database database, OutboxStore outbox, IJobMails mails, ShopStore shops, ShopClock clock)
{
    /// <summary>Puts the email into the outbox, once for each time the racket became ready.</summary>
    public Outcome Tell(Who who, long id)
    {
        var now = clock.Now;
        return database.Write<Outcome>(c =>
        {
            if (JobStore.Get(c, who, id) is not { } job)
                return new Outcome.Absent();
            if (job.State != JobState.Strung)
                return new Outcome.Refused(new NotReady());
            if (job.ToldReadyAt is not null)
                return new Outcome.Refused(new ToldReadyAlready());
            if (job.ClientMail is null || shops.Get().Mail is null)
                return new Outcome.Refused(new NoMailAddress());
            var mail = mails.Ready(job);
            outbox.Queue(c, new NewMail(MailKind.ClientNotice, job.ClientId, mail.Subject, mail.Body));
            c.Execute("UPDATE job SET told_ready_at = @now, version = version + 1 WHERE id = @id", new { id, now });
            return new Outcome.Done(id);
        });
    }
}
