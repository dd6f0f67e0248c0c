using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>What finders of a client's rackets did, as the client may read it.</summary>
public sealed class OwnPageFoundStore(Database database)
{
    public sealed record Deed
    {
        public long Id { get; init; }
        public FoundKind Kind { get; init; }
        public DateTimeOffset At { get; init; }
        public string Message { get; init; } = "";
        public string Contact { get; init; } = "";
        public DateTimeOffset? AnsweredAt { get; init; }
        public int Number { get; init; }
        public string Player { get; init; } = "";
    }

    /// <summary>The newest first. Those of rackets that are the client's no more are left out.</summary>
    public IReadOnlyList<Deed> Events(long client) => database.Read(c => c.Query<Deed>(EventsSql, new { client }).ToList());

    private const string EventsSql = """
        SELECT e.id, e.kind, e.at, e.message, e.contact, e.answered_at, r.number, p.name AS player
        FROM found_event e
        JOIN racket r ON r.id = e.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE e.client_id = @client AND p.client_id = @client
        ORDER BY e.at DESC, e.id DESC
        LIMIT 100
        """;
}
