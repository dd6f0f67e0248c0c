using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>Browsers that the owner marked as shared. Of the secret in such a browser’s cookie only the hash is kept.</summary>
public sealed class TabletStore(Database database, TimeProvider clock)
{
    public const int LongestName = 60;

    /// <summary>The newest first.</summary>
    public IReadOnlyList<TabletRow> All(Who who) => database.Read(c => c.Query<TabletRow>(AllSql, new { who.IsOwner }).AsList());

    private const string AllSql = "SELECT id, name, made_at FROM shared_tablet WHERE @IsOwner ORDER BY id DESC";

    /// <param name="who">The owner.</param>
    /// <param name="name">What to call it.</param>
    /// <param name="secret">In the browser's cookie from now on.</param>
    public Outcome Share(Who who, string name, string secret) => database.WriteAsOwner(who, c =>
        new Outcome.Done(c.ExecuteScalar<long>(ShareSql, new { Hash = Secret.Hash(secret), name, Now = clock.GetUtcNow() })));

    private const string ShareSql = "INSERT INTO shared_tablet (secret_hash, name, made_at) VALUES (@Hash, @name, @Now) RETURNING id";

    /// <summary>No PIN works there any more, and whoever changed over there is signed out.</summary>
    public Outcome End(Who who, long id) => database.WriteAsOwner(who, c =>
        c.Execute("DELETE FROM shared_tablet WHERE id = @id", new { id }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());

    /// <summary>Null for a browser that is not shared, or no longer.</summary>
    public TabletRow? Find(string? secret) => string.IsNullOrEmpty(secret) ? null : database.Read(c =>
        c.QuerySingleOrDefault<TabletRow>("SELECT id, name, made_at FROM shared_tablet WHERE secret_hash = @Hash", new { Hash = Secret.Hash(secret) }));

    /// <summary>All, in the caller's transaction.</summary>
    internal static void EndAll(SqliteConnection connection) => connection.Execute("DELETE FROM shared_tablet");
}
