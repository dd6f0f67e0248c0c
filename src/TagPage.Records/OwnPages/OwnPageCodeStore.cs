using System.Security.Cryptography;
using System.Text;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Clients;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>
/// Codes for what could hurt: sent to the mail address on file, good for ten minutes and five tries. A code that fits
/// lets the browser it was typed in do such things for ten minutes.
/// </summary>
public sealed class OwnPageCodeStore(Database database, LinkTokens keys, OutboxStore outbox, IOwnPageMails mails, TimeProvider clock)
{
    public const int MostTries = 5, MostAnHour = 3, MostADay = 10;

    public static readonly TimeSpan GoodFor = TimeSpan.FromMinutes(10);

    private sealed record Row
    {
        public long Id { get; init; }
        public string Secret { get; init; } = "";
        public int Tries { get; init; }
    }

    public bool IsFresh(Who who) => database.Read(c => IsFresh(c, who, clock.GetUtcNow()));

    /// <summary>In the caller's transaction: whether they may do what could hurt, at this moment. The shop always may.</summary>
    internal static bool IsFresh(SqliteConnection connection, Who who, DateTimeOffset now) =>
        connection.ExecuteScalar<bool>(IsFreshSql, new { who.IsShop, who.ClientId, who.Session, now });

    private const string IsFreshSql = """
        SELECT @IsShop OR EXISTS (SELECT 1 FROM own_page_session WHERE id_hash = @Session AND client_id = @ClientId AND fresh_until > @now)
        """;

    /// <summary>A new code makes the ones before it worth nothing.</summary>
    public Outcome Send(Who who)
    {
        var now = clock.GetUtcNow();
        return database.Write<Outcome>(c =>
        {
            if (who.ClientId is not { } client)
                return new Outcome.Absent();
            if (c.ExecuteScalar<string?>("SELECT mail FROM client WHERE id = @client", new { client }) is null)
                return new Outcome.Refused(new NoAddressOnFile());
            if (c.ExecuteScalar<bool>(TooManySql, new { client, Hour = now.AddHours(-1), HourOn = now.AddHours(1), Day = now.AddDays(-1), DayOn = now.AddDays(1), MostAnHour, MostADay }))
                return new Outcome.Refused(new CodesEnough());
            c.Execute("DELETE FROM own_page_code WHERE client_id = @client AND made_at <= @Day", new { client, Day = now.AddDays(-1) });
            var id = c.ExecuteScalar<long>(AddSql, new { client, now, Until = now + GoodFor });
            var mail = mails.Code(Addressee.Of(c, client), id);
            outbox.Queue(c, new NewMail(MailKind.OwnPageCode, client, mail.Subject, mail.Body) { CodeId = id });
            return new Outcome.Done(client);
        });
    }

    private const string TooManySql = """
        SELECT (SELECT COUNT(*) FROM own_page_code WHERE client_id = @client AND made_at > @Hour AND made_at < @HourOn) >= @MostAnHour
            OR (SELECT COUNT(*) FROM own_page_code WHERE client_id = @client AND made_at > @Day AND made_at < @DayOn) >= @MostADay
        """;

    private const string AddSql = "INSERT INTO own_page_code (client_id, made_at, expires_at) VALUES (@client, @now, @Until) RETURNING id";

    public Outcome Try(Who who, string typed)
    {
        var now = clock.GetUtcNow();
        return database.Write<Outcome>(c =>
        {
            if (who.ClientId is not { } client)
                return new Outcome.Absent();
            if (c.QueryFirstOrDefault<Row>(NewestSql, new { client, now, MostTries }) is not { } row)
                return new Outcome.Refused(new CodeOver());
            if (!Fits(row, typed))
                return new Outcome.Refused(Miss(c, row) >= MostTries ? new CodeOver() : new CodeWrong());
            c.Execute("UPDATE own_page_code SET used_at = @now WHERE id = @Id", new { row.Id, now });
            c.Execute("UPDATE own_page_session SET fresh_until = @Until WHERE id_hash = @Session AND client_id = @client", new { who.Session, client, Until = now + GoodFor });
            return new Outcome.Done(client);
        });
    }

    private static int Miss(SqliteConnection connection, Row row) =>
        connection.ExecuteScalar<int>("UPDATE own_page_code SET tries = tries + 1 WHERE id = @Id RETURNING tries", row);

    /// <summary>The newest of all, so that an older one counts no more; then whether it still holds.</summary>
    private const string NewestSql = """
        SELECT id, secret, tries
        FROM own_page_code
        WHERE id = (SELECT MAX(id) FROM own_page_code WHERE client_id = @client) AND used_at IS NULL AND expires_at > @now AND tries < @MostTries
        """;

    private bool Fits(Row row, string typed) => CryptographicOperations.FixedTimeEquals(
        Encoding.UTF8.GetBytes(keys.Digits(row.Id, row.Secret)), Encoding.UTF8.GetBytes(string.Concat(typed.Where(char.IsAsciiDigit))));
}
