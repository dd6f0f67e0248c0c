using Dapper;
using TagPage.Core.Jobs;
using TagPage.Web.Data;
using TagPage.Web.Mail;
using TagPage.Web.Pages.My;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>Tells the client that a racket is ready to be collected.</summary>
public sealed class ReadyStore(Database database, OutboxStore outbox, CornerNotices notices, ShopStore shops, ShopClock clock)
{
    /// <summary>What it says.</summary>
    public CornerNotices.Notice Words(long job) => database.Read(c => notices.Ready(c, job));

    /// <summary>Puts the mail into the outbox, once for each time it got ready.</summary>
    public Outcome Tell(long id)
    {
        var now = clock.Now;
        return database.Write<Outcome>(c =>
        {
            if (JobStore.Get(c, id) is not { } job)
                return new Outcome.Absent();
            if (job.State != JobState.Strung)
                return new Outcome.Refused("", "This racket is not waiting to be collected.");
            if (job.ToldReadyAt is not null)
                return new Outcome.Refused("", "The client was told already.");
            if (job.ClientMail is null || shops.Get().Mail is null)
                return new Outcome.Refused("", "No mail can go: the client or the shop has no mail address on file.");
            var words = notices.Ready(c, id);
            outbox.Queue(c, new NewMail(MailKind.ClientNotice, job.ClientId, words.Subject, words.Body));
            c.Execute("UPDATE job SET told_ready_at = @now, version = version + 1 WHERE id = @id", new { id, now });
            return new Outcome.Done(id);
        });
    }
}
