using Dapper;
using TagPage.Core.Rackets;
using TagPage.Web.Data;
using TagPage.Web.Mail;
using TagPage.Web.Pages.Nudge;

namespace TagPage.Web.Pages.My;

/// <summary>A restring that a client asks for: a ticket that waits for the racket to be brought.</summary>
public sealed class OrderStore(Database database, OutboxStore outbox, CornerNotices notices, ShopClock clock)
{
    /// <param name="Wish">What should be different; empty for the same again.</param>
    /// <param name="Where">Where it will be dropped off.</param>
    /// <param name="By">By when.</param>
    /// <param name="NeededBy">When it is needed again.</param>
    public sealed record Order(string Wish, string Where, DateOnly? By, DateOnly? NeededBy);

    /// <summary>Of one racket; each leaves a ticket and a mail, taken back or not.</summary>
    public const int MostADay = 3;

    public enum Answer { Done, Absent, NotInPlay, AtShop, TooOften, NeverStrung }

    public Answer Ask(long client, long racket, string formKey, Order order)
    {
        var today = clock.Today;
        return database.Write(c =>
        {
            if (MyRacketStore.Get(c, client, racket) is not { } row)
                return Answer.Absent;
            if (!row.IsMine || row.State is RacketState.Gone)
                return Answer.NotInPlay;
            var answer = Answer.Done;
            var outcome = SubmittedForms.Once(c, formKey, clock.Now, () =>
            {
                answer = row.JobId is not null ? Answer.AtShop : c.ExecuteScalar<int>(AskedTodaySql, new { racket, today }) >= MostADay ? Answer.TooOften : Answer.Done;
                var job = answer == Answer.Done ? AskedJob.Make(c, racket, today, order.Wish) : null;
                if (job is null)
                {
                    answer = answer == Answer.Done ? Answer.NeverStrung : answer;
                    return new Outcome.Refused("", "");
                }
                c.Execute(DetailsSql, new { job, order.Where, order.By, order.NeededBy });
                if (notices.Received(c, job.Value) is { } thanks)
                    outbox.Queue(c, new NewMail(MailKind.ClientNotice, client, thanks.Subject, thanks.Body));
                return new Outcome.Done(job.Value);
            });
            return outcome is Outcome.Done ? Answer.Done : answer;
        });
    }

    private const string AskedTodaySql = "SELECT COUNT(*) FROM job WHERE racket_id = @racket AND asked_by_client = 1 AND received_on = @today";

    private const string DetailsSql = """
        UPDATE job SET drop_off_where = @Where, drop_off_by = @By, needed_by = @NeededBy, asked_by_client = 1 WHERE id = @job
        """;

    /// <summary>Until it is on the machine. Done tells the racket.</summary>
    public Outcome Cancel(long client, long job) => database.Write<Outcome>(c =>
    {
        if (c.QuerySingleOrDefault<long?>(RacketSql, new { client, job }) is not { } racket)
            return new Outcome.Absent();
        return c.Execute(CancelSql, new { job }) == 1 ? new Outcome.Done(racket) : new Outcome.Refused("", racket.ToString(System.Globalization.CultureInfo.InvariantCulture));
    });

    private const string RacketSql = """
        SELECT r.id
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE j.id = @job AND p.client_id = @client AND (j.expected = 1 OR j.asked_by_client = 1)
        """;

    private const string CancelSql = "UPDATE job SET state = 'Cancelled', version = version + 1 WHERE id = @job AND state = 'Waiting'";
}
