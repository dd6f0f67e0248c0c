using Dapper;
using TagPage.Records.Search;
using TagPage.Records.Storage;

namespace TagPage.Records.Players;

/// <summary>Players to choose from, with whose they are and the number their next racket gets.</summary>
public sealed class PlayerPickStore(Database database)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public long ClientId { get; init; }
        public string ClientName { get; init; } = "";
        public int NextNumber { get; init; }
    }

    private const string Columns = """
        SELECT p.id, p.name, p.client_id, c.name AS client_name,
               (SELECT COALESCE(MAX(r.number), 0) + 1 FROM racket r WHERE r.player_id = p.id) AS next_number
        FROM player p
        JOIN client c ON c.id = p.client_id
        """;

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = $"{Columns} WHERE p.id = @id";

    /// <summary>Players with such a name, or whose client has one.</summary>
    /// <param name="words">From <see cref="SearchWords"/>.</param>
    public IReadOnlyList<Row> Find(string words) => database.Read(c => c.Query<Row>(FindSql, new { Words = words }).ToList());

    private const string FindSql = $"""
        WITH hit AS (SELECT rowid / 4 AS id, rowid % 4 AS kind FROM search WHERE search MATCH @Words LIMIT 500)
        {Columns}
        WHERE p.id IN (SELECT id FROM hit WHERE kind = 1
                       UNION SELECT o.id FROM player o JOIN hit ON hit.kind = 0 AND o.client_id = hit.id)
        ORDER BY p.name_key, p.id
        LIMIT 30
        """;
}
