using Dapper;
using TagPage.Records.Search;
using TagPage.Records.Storage;

namespace TagPage.Records.Clients;

/// <summary>The clients in the order of the shop's language, a page at a time.</summary>
public sealed class ClientListStore(Database database)
{
    public const int PageSize = 50;

    public sealed record Row
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public string? Phone { get; init; }
        public string? Players { get; init; }
        public int Rackets { get; init; }
    }

    /// <summary>One row more than a page holds shows that there is a next page.</summary>
    /// <param name="from">First letters to begin at; empty for the beginning.</param>
    /// <param name="after">The last client of the page before, or null.</param>
    public IReadOnlyList<Row> Page(string from, long? after) => database.Read(c => after is null
        ? c.Query<Row>(FromSql, new { From = NameOrder.Of(c).KeyOfLetters(from), Count = PageSize + 1 }).ToList()
        : c.Query<Row>(AfterSql, new { After = after, Count = PageSize + 1 }).ToList());

    internal const string FromSql = $"""
        {Columns}
        WHERE c.name_key >= @From
        ORDER BY c.name_key, c.id
        LIMIT @Count
        """;

    internal const string AfterSql = $"""
        {Columns}
        WHERE (c.name_key, c.id) > (SELECT l.name_key, l.id FROM client l WHERE l.id = @After)
        ORDER BY c.name_key, c.id
        LIMIT @Count
        """;

    private const string Columns = """
        SELECT c.id, c.name, c.phone,
               (SELECT group_concat(p.name, ', ' ORDER BY p.name_key) FROM player p WHERE p.client_id = c.id) AS players,
               (SELECT COUNT(*) FROM player p JOIN racket r ON r.player_id = p.id WHERE p.client_id = c.id) AS rackets
        FROM client c
        """;
}
