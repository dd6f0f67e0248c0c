using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Rackets;
using TagPage.Records.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>A restring a client asks for: a ticket that waits for the racket to be brought.</summary>
public sealed class OrderStore(Database database, OutboxStore outbox, ShopStore shops, IJobMails mails, ShopClock clock)
{
    /// <summary>For one racket; each leaves a ticket and an email, cancelled or not.</summary>
    public const int MostADay = 3;

    /// <summary>Done carries the number of the ticket.</summary>
    public Outcome Ask(Who who, long racket, string formKey, JobRequest request) => database.Write<Outcome>(c =>
        who.ClientId is not { } client || OwnPageRacketStore.Get(c, client, racket) is not { } row ? new Outcome.Absent()
        : !row.IsMine || row.State is RacketState.Gone ? new Outcome.Refused(new RacketGone())
        : FormKeys.Once(c, who, formKey, clock.Now, () => Make(c, client, row, request)));

    private Outcome Make(SqliteConnection connection, long client, OwnPageRacket racket, JobRequest request)
    {
        var today = clock.Today;
        if (racket.JobId is not null)
            return new Outcome.Refused(new RacketAtShop());
        if (connection.ExecuteScalar<int>(AskedTodaySql, new { racket.RacketId, today }) >= MostADay)
            return new Outcome.Refused(new OrderedEnough(MostADay));
        if (request.StopId is { } stop && !JobStopStore.IsUsed(connection, stop))
            return new Outcome.Refused(new StopUnknown("Where"));
        if (RequestedJob.Make(connection, racket.RacketId, (clock.Now, today), request) is not { } job)
            return new Outcome.Refused(new NeverStrung());
        Thank(connection, client, job);
        return new Outcome.Done(job);
    }

    private const string AskedTodaySql = """
        SELECT COUNT(*)
        FROM job j
        JOIN job_request q ON q.job_id = j.id
        WHERE j.racket_id = @RacketId AND q.asked_in = 'OwnPage' AND j.received_on = @today
        """;

    private void Thank(SqliteConnection connection, long client, long job)
    {
        if (shops.Get().Mail is null || JobStore.Get(connection, Who.Shop, job) is not { ClientMail: not null } row)
            return;
        var mail = mails.Received(row);
        outbox.Queue(connection, new NewMail(MailKind.ClientNotice, client, mail.Subject, mail.Body));
    }

    /// <summary>Until it is on the machine. Done tells the racket.</summary>
    public Outcome Cancel(Who who, long job) => database.Write<Outcome>(c =>
    {
        if (c.QuerySingleOrDefault<long?>(RacketSql, new { who.ClientId, job }) is not { } racket)
            return new Outcome.Absent();
        return c.Execute(CancelSql, new { job }) == 1 ? new Outcome.Done(racket) : new Outcome.Refused(new OrderUnderWay(racket));
    });

    private const string RacketSql = """
        SELECT r.id
        FROM job j
        JOIN job_request q ON q.job_id = j.id
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE j.id = @job AND p.client_id = @ClientId AND (q.expected = 1 OR q.asked_in = 'OwnPage')
        """;

    private const string CancelSql = "UPDATE job SET state = 'Cancelled', version = version + 1 WHERE id = @job AND state = 'Waiting'";
}
