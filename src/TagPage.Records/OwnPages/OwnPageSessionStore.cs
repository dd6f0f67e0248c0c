using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>The browsers in which a client's private link was exchanged, one row each.</summary>
public sealed class OwnPageSessionStore(Database database, TimeProvider clock)
{
    public static readonly TimeSpan Longest = TimeSpan.FromDays(30);

    private const int SecretBytes = 16;

    public sealed record Row
    {
        public string IdHash { get; init; } = "";
        public long ClientId { get; init; }
    }

    /// <summary>Null once signed out, too old, or if its link was withdrawn since.</summary>
    public Row? Find(string? secret) => secret is { Length: > 0 and < 100 }
        ? database.Read(c => c.QuerySingleOrDefault<Row>(FindSql, new { Hash = Secret.Hash(secret), Oldest = clock.GetUtcNow() - Longest }))
        : null;

    private const string FindSql = "SELECT id_hash, client_id FROM own_page_session WHERE id_hash = @Hash AND made_at > @Oldest";

    /// <summary>The cookie's value for a new session; null if the link was withdrawn meanwhile.</summary>
    public string? Begin(OwnPageLinkStore.Row link)
    {
        var secret = Secret.New(SecretBytes);
        var now = clock.GetUtcNow();
        return database.Write(c =>
        {
            c.Execute(ForgetSql, new { Oldest = now - Longest });
            return c.Execute(BeginSql, new { Hash = Secret.Hash(secret), link.Id, link.Secret, now }) == 1;
        }) ? secret : null;
    }

    private const string ForgetSql = "DELETE FROM own_page_session WHERE made_at <= @Oldest";

    private const string BeginSql = """
        INSERT INTO own_page_session (id_hash, client_id, link_id, made_at)
        SELECT @Hash, client_id, id, @now FROM own_page_link WHERE id = @Id AND secret = @Secret AND revoked_at IS NULL AND expires_at > @now
        """;

    public void End(string idHash) => database.Write(c => c.Execute("DELETE FROM own_page_session WHERE id_hash = @idHash", new { idHash }));

    /// <summary>
    /// Every browser is signed out and every link is void, those of reminders and of notices too: what somebody else may
    /// have seen no longer works. Mails still on their way bring links that work, and reminders can be stopped.
    /// </summary>
    public Outcome EndAll(Who who, long client) => database.Write<Outcome>(c =>
    {
        if (!c.ExecuteScalar<bool>(ThemselvesSql, new { who.IsOwner, who.ClientId, client }))
            return new Outcome.Absent();
        c.Execute(EndAllSql, new { client, Now = clock.GetUtcNow() });
        return new Outcome.Done(client);
    });

    private const string ThemselvesSql = $"SELECT EXISTS (SELECT 1 FROM client WHERE id = @client AND {Who.DecidesForClient})";

    private const string EndAllSql = """
        DELETE FROM own_page_session WHERE client_id = @client;
        UPDATE own_page_link SET revoked_at = @Now WHERE client_id = @client AND revoked_at IS NULL;
        UPDATE reminder SET secret = lower(hex(randomblob(16))) WHERE client_id = @client;
        UPDATE found_event SET secret = lower(hex(randomblob(16))) WHERE client_id = @client;
        """;

    /// <summary>Of all clients, in the caller's transaction. Their links are not touched: they end with the key they were made with.</summary>
    internal static void EndEverybodys(SqliteConnection connection) => connection.Execute("DELETE FROM own_page_session");

    public int Count(long client) => database.Read(c => c.ExecuteScalar<int>(CountSql, new { client, Oldest = clock.GetUtcNow() - Longest }));

    private const string CountSql = "SELECT COUNT(*) FROM own_page_session WHERE client_id = @client AND made_at > @Oldest";
}
