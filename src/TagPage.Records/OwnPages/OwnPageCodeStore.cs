using System.Security.Cryptography;
using System.Text;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Clients;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>
/// Codes that protect what could do harm: sent to the email address on file, valid for ten minutes and five tries. The
/// right code lets the browser it was typed in do such things for ten minutes.
/// </summary>
public sealed class OwnPageCodeStore(Database database, LinkTokens keys, OutboxStore outbox, IOwnPageMails mails, TimeProvider clock)
{
    public const int MostTries = 5, MostAnHour = 3, MostADay = 10;

    public static readonly TimeSpan GoodFor = TimeSpan.FromMinutes(10);

    public enum Sent { Yes, NoMail, TooMany }

    public enum Tried { Fits, Wrong, Over }

    private sealed record Row
    {
        public long Id { get; init; }
        public string Secret { get; init; } = "";
        public int Tries { get; init; }
    }

    public bool IsFresh(string session) => database.Read(c => c.ExecuteScalar<bool>(IsFreshSql, new { session, Now = clock.GetUtcNow() }));

    private const string IsFreshSql = "SELECT EXISTS (SELECT 1 FROM own_page_session WHERE id_hash = @session AND fresh_until > @Now)";

    /// <summary>A new code voids the ones before it.</summary>
    public Sent Send(long client)
    {
        var now = clock.GetUtcNow();
        return database.Write(c =>
        {
            if (c.ExecuteScalar<string?>("SELECT mail FROM client WHERE id = @client", new { client }) is null)
                return Sent.NoMail;
            if (c.ExecuteScalar<bool>(TooManySql, new { client, Hour = now.AddHours(-1), HourOn = now.AddHours(1), Day = now.AddDays(-1), DayOn = now.AddDays(1), MostAnHour, MostADay }))
                return Sent.TooMany;
            c.Execute("DELETE FROM own_page_code WHERE client_id = @client AND made_at <= @Day", new { client, Day = now.AddDays(-1) });
            var id = c.ExecuteScalar<long>(AddSql, new { client, now, Until = now + GoodFor });
            var mail = mails.Code(Addressee.Of(c, client), id);
            outbox.Queue(c, new NewMail(MailKind.OwnPageCode, client, mail.Subject, mail.Body) { CodeId = id });
            return Sent.Yes;
        });
    }

    private const string TooManySql = """
        SELECT (SELECT COUNT(*) FROM own_page_code WHERE client_id = @client AND made_at > @Hour AND made_at < @HourOn) >= @MostAnHour
            OR (SELECT COUNT(*) FROM own_page_code WHERE client_id = @client AND made_at > @Day AND made_at < @DayOn) >= @MostADay
        """;

    private const string AddSql = "INSERT INTO own_page_code (client_id, made_at, expires_at) VALUES (@client, @now, @Until) RETURNING id";

    public Tried Try(long client, string session, string typed)
    {
        var now = clock.GetUtcNow();
        return database.Write(c =>
        {
            if (c.QueryFirstOrDefault<Row>(NewestSql, new { client, now, MostTries }) is not { } row)
                return Tried.Over;
            if (!Fits(row, typed))
                return c.ExecuteScalar<int>("UPDATE own_page_code SET tries = tries + 1 WHERE id = @Id RETURNING tries", row) >= MostTries ? Tried.Over : Tried.Wrong;
            c.Execute("UPDATE own_page_code SET used_at = @now WHERE id = @Id", new { row.Id, now });
            c.Execute("UPDATE own_page_session SET fresh_until = @Until WHERE id_hash = @session AND client_id = @client", new { session, client, Until = now + GoodFor });
            return Tried.Fits;
        });
    }

    /// <summary>The newest of all, so that an older one no longer counts; then whether it is still valid.</summary>
    private const string NewestSql = """
        SELECT id, secret, tries
        FROM own_page_code
        WHERE id = (SELECT MAX(id) FROM own_page_code WHERE client_id = @client) AND used_at IS NULL AND expires_at > @now AND tries < @MostTries
        """;

    private bool Fits(Row row, string typed) => CryptographicOperations.FixedTimeEquals(
        Encoding.UTF8.GetBytes(keys.Digits(row.Id, row.Secret)), Encoding.UTF8.GetBytes(string.Concat(typed.Where(char.IsAsciiDigit))));

    /// <summary>In the caller's transaction: whether the browser may do what could do harm, at this moment.</summary>
    internal static bool IsFresh(SqliteConnection connection, string session, DateTimeOffset now) =>
        connection.ExecuteScalar<bool>(IsFreshSql, new { session, Now = now });
}
