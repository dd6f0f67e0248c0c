using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>What finders have done, for the owner to read.</summary>
public sealed class FoundLogStore(Database database)
{
    public const int OnAPage = 50;

    public sealed record Row
    {
        public long Id { get; init; }
        public FoundKind Kind { get; init; }
        public DateTimeOffset At { get; init; }
        public string Message { get; init; } = "";
        public string Contact { get; init; } = "";
        public DateTimeOffset? AnsweredAt { get; init; }
        public DateTimeOffset? WipedAt { get; init; }
        public string? NoticeState { get; init; }
        public bool IsToShop { get; init; }
        public long RacketId { get; init; }
        public int Number { get; init; }
        public string Player { get; init; } = "";
    }

    public sealed record LostRow
    {
        public long RacketId { get; init; }
        public int Number { get; init; }
        public string Player { get; init; } = "";
        public string Client { get; init; } = "";
        public DateOnly LostSince { get; init; }
        public string LostNote { get; init; } = "";
    }

    private const string Columns = """
        e.id, e.kind, e.at, e.message, e.contact, e.answered_at, e.wiped_at, o.state AS notice_state, o.kind = 'ShopNotice' AS is_to_shop,
        e.racket_id, r.number, p.name AS player
        FROM found_event e
        JOIN racket r ON r.id = e.racket_id
        JOIN player p ON p.id = r.player_id
        LEFT JOIN outbox o ON o.id = e.notice_id
        """;

    /// <summary>The newest first, from before an event on.</summary>
    public IReadOnlyList<Row> Page(long before) => database.Read(c => c.Query<Row>(PageSql, new { before, Most = OnAPage + 1 }).AsList());

    private const string PageSql = $"SELECT {Columns} WHERE e.id < @before ORDER BY e.id DESC LIMIT @Most";

    public IReadOnlyList<Row> Of(long racket) => database.Read(c => c.Query<Row>(OfSql, new { racket, Most = OnAPage }).AsList());

    private const string OfSql = $"SELECT {Columns} WHERE e.racket_id = @racket ORDER BY e.at DESC, e.id DESC LIMIT @Most";

    public IReadOnlyList<LostRow> LostNow() => database.Read(c => c.Query<LostRow>(LostSql).AsList());

    private const string LostSql = """
        SELECT r.id AS racket_id, r.number, p.name AS player, c.name AS client, r.lost_since, r.lost_note
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE r.lost_since IS NOT NULL AND r.state <> 'Sold'
        ORDER BY r.lost_since DESC, r.id
        """;
}
