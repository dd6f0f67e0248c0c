using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>
/// One-time links of the command line. The secret part is 192 random bits, of which only the hash is kept; a newer link
/// voids all older ones. All in the caller's transaction.
/// </summary>
internal static class OneTimeLinkStore
{
    private static readonly TimeSpan Lifetime = TimeSpan.FromMinutes(30);

    public static string New(SqliteConnection connection, DateTimeOffset now)
    {
        connection.Execute("DELETE FROM setup_link");
        var token = Secret.New(24);
        connection.Execute(NewSql, new { Hash = Secret.Hash(token), Expires = now + Lifetime });
        return token;
    }

    private const string NewSql = "INSERT INTO setup_link (token_hash, expires_at) VALUES (@Hash, @Expires)";

    /// <summary>False where it is used, too old or wrong.</summary>
    public static bool IsOpen(SqliteConnection connection, string token, DateTimeOffset now) =>
        connection.ExecuteScalar<bool>(IsOpenSql, new { Hash = Secret.Hash(token), Now = now });

    private const string IsOpenSql = """
        SELECT EXISTS (SELECT 1 FROM setup_link WHERE token_hash = @Hash AND used_at IS NULL AND expires_at > @Now)
        """;

    public static void Use(SqliteConnection connection, string token, DateTimeOffset now) =>
        connection.Execute(UseSql, new { Hash = Secret.Hash(token), Now = now });

    private const string UseSql = "UPDATE setup_link SET used_at = @Now WHERE token_hash = @Hash";
}
