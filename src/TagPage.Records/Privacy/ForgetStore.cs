using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Clients;
using TagPage.Records.Loans;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Privacy;

/// <summary>Clients who asked for their data to be deleted, until it happens.</summary>
public sealed class ForgetStore(Database database, OutboxStore outbox, IOwnPageMails mails, ShopClock clock)
{
    public static readonly TimeSpan Grace = TimeSpan.FromDays(7);

    /// <summary>Asked already is as good. A client needs a code for it.</summary>
    public Outcome Ask(Who who, long client)
    {
        var now = clock.Now;
        return database.Write<Outcome>(c =>
        {
            if (!c.ExecuteScalar<bool>(MaySql, new { who.IsOwner, who.ClientId, client }))
                return new Outcome.Absent();
            if (!OwnPageCodeStore.IsFresh(c, who, now))
                return new Outcome.Refused(new CodeRanOut());
            if (IsOpen(c, client))
                return new Outcome.Refused(new TicketsOpen());
            if (LoanStore.HasOpen(c, client))
                return new Outcome.Refused(new LoanOpen());
            if (c.Execute(AskSql, new { client, At = now + Grace }) == 0)
                return new Outcome.Done(client);
            if (!who.IsShop)
                ClientRequestStore.Add(c, client, RequestKind.Forget, "", now);
            Tell(c, client, now);
            return new Outcome.Done(client);
        });
    }

    private const string MaySql = $"SELECT EXISTS (SELECT 1 FROM client WHERE id = @client AND {Who.DecidesForClient})";

    private const string AskSql = "UPDATE client SET forget_at = @At, version = version + 1 WHERE id = @client AND forget_at IS NULL";

    private void Tell(SqliteConnection connection, long client, DateTimeOffset now)
    {
        var to = Addressee.Of(connection, client);
        if (to.Mail is null)
            return;
        var mail = mails.Forgetting(to, clock.DayOf(now + Grace));
        outbox.Queue(connection, new NewMail(MailKind.ClientNotice, client, mail.Subject, mail.Body));
    }

    /// <summary>Something is still to be strung, collected or paid for.</summary>
    internal static bool IsOpen(SqliteConnection connection, long client) => connection.ExecuteScalar<bool>(OpenSql, new { client });

    private const string OpenSql = $"SELECT EXISTS (SELECT 1 {OpenTickets})";

    private const string OpenTickets = """
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        LEFT JOIN job_request q ON q.job_id = j.id
        WHERE p.client_id = @client AND (j.state IN ('Waiting', 'OnMachine', 'Strung') OR (j.state <> 'Cancelled' AND j.paid_on IS NULL))
        """;

    /// <summary>What has to be settled first.</summary>
    public IReadOnlyList<OpenTicket> Open(long client) => database.Read(c => c.Query<OpenTicket>(OpenRowsSql, new { client }).AsList());

    private const string OpenRowsSql = $"""
        SELECT j.id, j.state, p.name AS player, r.number, COALESCE(q.expected, 0) AS expected,
               j.state = 'Waiting' AND COALESCE(q.expected = 1 OR q.asked_in = 'OwnPage', 0) AS can_cancel
        {OpenTickets}
        ORDER BY j.id
        """;

    /// <summary>Kept already is as good.</summary>
    public Outcome Undo(Who who, long client) => database.Write<Outcome>(c =>
    {
        if (!c.ExecuteScalar<bool>(MaySql, new { who.IsOwner, who.ClientId, client }))
            return new Outcome.Absent();
        c.Execute(UndoSql, new { client });
        return new Outcome.Done(client);
    });

    private const string UndoSql = """
        UPDATE client SET forget_at = NULL, version = version + 1 WHERE id = @client AND forget_at IS NOT NULL;
        DELETE FROM client_request WHERE client_id = @client AND kind = 'Forget';
        """;

    /// <summary>Those whose days of grace are over. Whoever has brought a racket meanwhile waits until that is settled.</summary>
    public IReadOnlyList<long> Due() => database.Read(c =>
        c.Query<long>("SELECT id FROM client WHERE forget_at <= @Now ORDER BY forget_at", new { clock.Now }).Where(id => !IsOpen(c, id) && !LoanStore.HasOpen(c, id)).ToList());
}
