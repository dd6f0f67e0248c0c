using Dapper;
using TagPage.Records.Search;
using TagPage.Records.Storage;

namespace TagPage.Records.Tags;

/// <summary>Rackets to choose from for a blank tag.</summary>
public sealed class RacketPickStore(Database database)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public int Number { get; init; }
        public string PlayerName { get; init; } = "";
        public string ClientName { get; init; } = "";
        public string Frame { get; init; } = "";
        public string TapeColour { get; init; } = "";
        public bool IsTagged { get; init; }
    }

    private const string Columns = """
        SELECT r.id, r.number, p.name AS player_name, c.name AS client_name, r.frame, r.tape_colour,
               EXISTS (SELECT 1 FROM tag t WHERE t.racket_id = r.id AND t.state = 'Live') AS is_tagged
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        """;

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = $"""
        {Columns}
        WHERE r.id = @id AND r.state <> 'Sold'
        """;

    /// <summary>The other rackets of a racket's player.</summary>
    public IReadOnlyList<Row> Beside(long racket) => database.Read(c => c.Query<Row>(BesideSql, new { racket }).ToList());

    private const string BesideSql = $"""
        {Columns}
        WHERE r.player_id = (SELECT player_id FROM racket WHERE id = @racket) AND r.id <> @racket AND r.state <> 'Sold'
        ORDER BY r.number
        """;

    /// <summary>What is on the bench and what was added last.</summary>
    public IReadOnlyList<Row> Recent() => database.Read(c => c.Query<Row>(RecentSql).ToList());

    private const string RecentSql = $"""
        {Columns}
        WHERE r.state <> 'Sold'
          AND (r.id IN (SELECT n.id FROM racket n ORDER BY n.id DESC LIMIT 6)
               OR r.id IN (SELECT j.racket_id FROM job j WHERE j.state IN ('Waiting', 'OnMachine', 'Strung') ORDER BY j.ticket DESC LIMIT 6))
        ORDER BY r.id DESC
        """;

    /// <summary>Rackets whose frame, player or client has such a name.</summary>
    /// <param name="words">From <see cref="SearchWords"/>.</param>
    public IReadOnlyList<Row> Find(string words) => database.Read(c => c.Query<Row>(FindSql, new { Words = words }).ToList());

    private const string FindSql = $"""
        WITH hit AS (SELECT rowid / 4 AS id, rowid % 4 AS kind FROM search WHERE search MATCH @Words LIMIT 500)
        {Columns}
        WHERE r.state <> 'Sold'
          AND r.id IN (SELECT id FROM hit WHERE kind = 2
                       UNION SELECT q.id FROM racket q JOIN hit ON hit.kind = 1 AND q.player_id = hit.id
                       UNION SELECT q.id FROM racket q JOIN player o ON o.id = q.player_id JOIN hit ON hit.kind = 0 AND o.client_id = hit.id)
        ORDER BY p.name_key, r.number
        LIMIT 30
        """;
}
