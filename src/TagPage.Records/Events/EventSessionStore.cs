using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>
/// Tablets of an event's helpers. They come by the event's link, which the owner shows as a square, and end with the event: when
/// it is closed, at the latest a day after its last.
/// </summary>
public sealed class EventSessionStore(Database database, LinkTokens keys, ShopClock clock)
{
    public sealed record Row(long EventId, string IdHash);

    /// <summary>What the event's link carries.</summary>
    public string Token(EventRow desk) => keys.Token(LinkPurpose.EventDesk, desk.Id, desk.Secret);

    /// <summary>Null for a link that is void, or of an event that is over.</summary>
    public EventRow? Of(string token) => LinkTokens.Claimed(token) is { } id
        && database.Read(c => c.QuerySingleOrDefault<EventRow>(OpenSql, new { id, Yesterday })) is { } desk
        && keys.Fits(token, LinkPurpose.EventDesk, desk.Id, desk.Secret) ? desk : null;

    private const string OpenSql = $"SELECT {EventRow.Columns} FROM event v WHERE v.id = @id AND v.closed_at IS NULL AND v.to_on >= @Yesterday";

    /// <summary>The cookie's value for a new session; null if the link has become void meanwhile.</summary>
    public string? Begin(EventRow desk)
    {
        var secret = Secret.New(16);
        var values = new { Hash = Secret.Hash(secret), desk.Id, desk.Secret, clock.Now, Yesterday };
        return database.Write(c => c.Execute(BeginSql, values)) == 1 ? secret : null;
    }

    private const string BeginSql = """
        INSERT INTO event_session (id_hash, event_id, made_at)
        SELECT @Hash, id, @Now FROM event WHERE id = @Id AND secret = @Secret AND closed_at IS NULL AND to_on >= @Yesterday
        """;

    /// <summary>Null once the event is over, or its helpers were signed out.</summary>
    public Row? Find(string? secret) => secret is { Length: > 0 and < 100 }
        && database.Read(c => c.ExecuteScalar<long?>(FindSql, new { Hash = Secret.Hash(secret), Yesterday })) is { } found ? new Row(found, Secret.Hash(secret)) : null;

    private const string FindSql = """
        SELECT v.id FROM event_session s JOIN event v ON v.id = s.event_id
        WHERE s.id_hash = @Hash AND v.closed_at IS NULL AND v.to_on >= @Yesterday
        """;

    public void End(string? secret)
    {
        if (secret is { Length: > 0 and < 100 })
            database.Write(c => c.Execute("DELETE FROM event_session WHERE id_hash = @Hash", new { Hash = Secret.Hash(secret) }));
    }

    /// <summary>Of all events, in the caller's transaction.</summary>
    internal static void EndEverybodys(SqliteConnection connection) => connection.Execute("DELETE FROM event_session");

    public int Count(long eventId) => database.Read(c => c.ExecuteScalar<int>("SELECT COUNT(*) FROM event_session WHERE event_id = @eventId", new { eventId }));

    // The last evening may go on past midnight.
    private DateOnly Yesterday => clock.Today.AddDays(-1);
}
