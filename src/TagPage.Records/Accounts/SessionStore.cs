using System.Security.Cryptography;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>The signed-in browsers, one row each. A cookie without its row is worthless.</summary>
public sealed class SessionStore(Database database, TimeProvider clock)
{
    /// <summary>After this long a browser has to sign in again, however busy it was.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromDays(90);

    /// <returns>The new session's id, 128 random bits.</returns>
    public string Begin(string accountId)
    {
        var id = RandomNumberGenerator.GetHexString(32, lowercase: true);
        var now = clock.GetUtcNow();
        database.Write(c =>
        {
            c.Execute(ForgetSql, new { Oldest = now - Longest });
            c.Execute(BeginSql, new { id, accountId, now });
        });
        return id;
    }

    private const string ForgetSql = "DELETE FROM session WHERE made_at <= @Oldest";

    private const string BeginSql = "INSERT INTO session (id, account_id, made_at) VALUES (@id, @accountId, @now)";

    /// <summary>False once signed out, too old, or begun before the account's password was changed.</summary>
    public bool IsLive(string id, string accountId, string securityStamp) => database.Read(c =>
        c.ExecuteScalar<bool>(IsLiveSql, new { id, accountId, securityStamp, Oldest = clock.GetUtcNow() - Longest }));

    private const string IsLiveSql = """
        SELECT EXISTS (SELECT 1 FROM session s JOIN account a ON a.id = s.account_id
                       WHERE s.id = @id AND s.made_at > @Oldest AND a.id = @accountId AND a.security_stamp = @securityStamp)
        """;

    public void End(string id) => database.Write(c => c.Execute(EndSql, new { id }));

    private const string EndSql = "DELETE FROM session WHERE id = @id";

    public void EndAll(string accountId) => database.Write(c => EndAll(c, accountId));

    /// <summary>For callers that end them in a transaction of their own.</summary>
    internal static void EndAll(SqliteConnection connection, string accountId) => connection.Execute(EndAllSql, new { accountId });

    private const string EndAllSql = "DELETE FROM session WHERE account_id = @accountId";

    /// <summary>Of all accounts, in the caller's transaction; the one-time links go with them.</summary>
    internal static void EndEverybodys(SqliteConnection connection) => connection.Execute(EndEverybodysSql);

    private const string EndEverybodysSql = """
        DELETE FROM session;
        DELETE FROM setup_link;
        """;
}
