using System.Security.Cryptography;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>The signed-in browsers, one row each. A cookie without its row is worthless.</summary>
public sealed class SessionStore(Database database, OutboxStore outbox, TimeProvider clock)
{
    /// <summary>After this long a browser has to sign in again, however busy it was.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromDays(90);

    /// <param name="accountId">Who signed in.</param>
    /// <param name="way">By what.</param>
    /// <param name="browser">What the browser calls itself.</param>
    /// <param name="news">What the helper is told of it, or the shop where their address is unknown; null for nothing. A shop without an email address tells nobody.</param>
    /// <returns>The new session's id, 128 random bits.</returns>
    public string Begin(string accountId, SignInWay way, string browser, (string Subject, MailText Body)? news = null)
    {
        var id = RandomNumberGenerator.GetHexString(32, lowercase: true);
        var now = clock.GetUtcNow();
        database.Write(c =>
        {
            c.Execute(ForgetSql, new { Oldest = now - Longest });
            c.Execute(SignedInSql, new { accountId, now });
            c.Execute(BeginSql, new { id, accountId, Way = way.ToString(), Browser = browser.Length <= LongestBrowser ? browser : browser[..LongestBrowser], now });
            if (news is var (subject, body) && ShopHasMail(c))
                outbox.Queue(c, new NewMail(MailKind.ShopNotice, null, subject, body) { ToAddress = c.ExecuteScalar<string?>(AddressSql, new { accountId }) });
        });
        return id;
    }

    /// <summary>The same for somebody who changed over by PIN on a shared tablet; nobody is told.</summary>
    public string BeginByPin(string accountId, long tablet, string browser)
    {
        var id = RandomNumberGenerator.GetHexString(32, lowercase: true);
        var now = clock.GetUtcNow();
        database.Write(c =>
        {
            c.Execute(ForgetPinsSql, new { Oldest = now - PinStore.Lasts });
            c.Execute(BeginByPinSql, new { id, accountId, tablet, Browser = browser.Length <= LongestBrowser ? browser : browser[..LongestBrowser], now });
        });
        return id;
    }

    private const string ForgetPinsSql = "DELETE FROM session WHERE way = 'Pin' AND made_at <= @Oldest";

    private const string BeginByPinSql = """
        INSERT INTO session (id, account_id, way, browser, tablet_id, made_at) VALUES (@id, @accountId, 'Pin', @Browser, @tablet, @now)
        """;

    private const int LongestBrowser = 200;

    private const string ForgetSql = "DELETE FROM session WHERE made_at <= @Oldest";

    private const string BeginSql = "INSERT INTO session (id, account_id, way, browser, made_at) VALUES (@id, @accountId, @Way, @Browser, @now)";

    private const string SignedInSql = "UPDATE account SET signed_in_at = @now WHERE id = @accountId";

    /// <summary>Without an address of its own the shop can send nothing.</summary>
    internal static bool ShopHasMail(SqliteConnection connection) => connection.ExecuteScalar<bool>(HasMailSql);

    private const string HasMailSql = "SELECT EXISTS (SELECT 1 FROM shop WHERE mail IS NOT NULL)";

    private const string AddressSql = "SELECT mail FROM account WHERE id = @accountId";

    /// <summary>The browsers that an account is signed in with, the newest first.</summary>
    public IReadOnlyList<SessionRow> Of(string accountId) => database.Read(c => c.Query<SessionRow>(OfSql, new { accountId, Oldest = clock.GetUtcNow() - Longest }).AsList());

    private const string OfSql = """
        SELECT s.id, s.way, s.browser, s.made_at
        FROM session s
        WHERE s.account_id = @accountId AND s.made_at > @Oldest
        ORDER BY s.made_at DESC, s.id
        """;

    /// <summary>
    /// Who is signed in by it now; null once signed out, too old, or begun before the account's password was changed, and by PIN where a
    /// second step is owed.
    /// </summary>
    public SignedIn? Live(string id, string accountId, string securityStamp) => database.Read(c =>
        c.QuerySingleOrDefault<SignedIn>(LiveSql, new { id, accountId, securityStamp, Oldest = clock.GetUtcNow() - Longest, OldestPin = clock.GetUtcNow() - PinStore.Lasts }));

    private const string LiveSql = $"""
        SELECT a.name, iif(s.way = 'Pin', 'Bench', a.role) AS role, s.way = 'Pin' AS by_pin,
               s.way NOT IN ('Passkey', 'Pin') AND {PinStore.IsOwed} AS owes_second_step
        FROM session s
        JOIN account a ON a.id = s.account_id
        WHERE s.id = @id AND s.made_at > @Oldest AND a.id = @accountId AND a.security_stamp = @securityStamp AND a.ended_at IS NULL
          AND (s.way <> 'Pin' OR (s.made_at > @OldestPin AND NOT {PinStore.Owes}))
        """;

    public void End(string id) => database.Write(c => c.Execute(EndSql, new { id }));

    private const string EndSql = "DELETE FROM session WHERE id = @id";

    /// <summary>Signs out one of an account's browsers; false where it is none of that account's.</summary>
    public bool End(string accountId, string id) => database.Write(c => c.Execute(EndOwnSql, new { accountId, id })) == 1;

    private const string EndOwnSql = "DELETE FROM session WHERE account_id = @accountId AND id = @id";

    /// <summary>Signs out all of an account's browsers but one.</summary>
    /// <returns>How many.</returns>
    public int EndOthers(string accountId, string kept) => database.Write(c => c.Execute(EndOthersSql, new { accountId, kept }));

    private const string EndOthersSql = "DELETE FROM session WHERE account_id = @accountId AND id <> @kept";

    public void EndAll(string accountId) => database.Write(c => EndAll(c, accountId));

    /// <summary>For callers that end them in a transaction of their own.</summary>
    internal static void EndAll(SqliteConnection connection, string accountId) => connection.Execute(EndAllSql, new { accountId });

    private const string EndAllSql = "DELETE FROM session WHERE account_id = @accountId";

    /// <summary>Of all accounts, in the caller's transaction; the one-time links go with them.</summary>
    internal static void EndEverybodys(SqliteConnection connection) => connection.Execute(EndEverybodysSql);

    private const string EndEverybodysSql = """
        DELETE FROM session;
        DELETE FROM setup_link;
        DELETE FROM invitation;
        DELETE FROM shared_tablet;
        """;
}
