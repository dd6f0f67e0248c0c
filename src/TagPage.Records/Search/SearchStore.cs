using Dapper;
using TagPage.Core.Tags;
using TagPage.Records.Storage;

namespace TagPage.Records.Search;

/// <summary>Looks for clients, players, rackets, tickets and tags.</summary>
public sealed class SearchStore(Database database)
{
    /// <summary>If more match, there were too few words.</summary>
    public const int Most = 60;

    private const string Columns = """
        c.id AS client_id, c.name AS client, c.phone, p.name AS player,
        r.id AS racket_id, r.number, r.frame, r.tape_colour, r.state
        """;

    /// <summary>
    /// The row id of search names the record: 4 × id + 0 client, + 1 player, + 2 racket. Everybody found comes with all
    /// their rackets. Whole matches come before those that only begin so.
    /// </summary>
    public IReadOnlyList<SearchRow> ByWords(string words) => database.Read(c => SearchWords.AreLetters(words) || c.ExecuteScalar<bool>(AreManySql, new { words, MostWeighed })
        ? c.Query<SearchRow>(UnweighedSql, new { words, whole = SearchWords.Whole(words), Most }).ToList()
        : c.Query<SearchRow>(ByWordsSql, new { words, Most }).ToList());

    /// <summary>Weighing takes as long as there are matches.</summary>
    internal const int MostWeighed = 2000;

    private const string AreManySql = "SELECT EXISTS (SELECT 1 FROM search WHERE search MATCH @words LIMIT 1 OFFSET @MostWeighed)";

    private const string ByWordsSql = $"""
        WITH hit AS MATERIALIZED (
          SELECT rowid AS key, rank AS place FROM search WHERE search MATCH @words ORDER BY rank LIMIT @Most),
        {OfHits}
        """;

    // A good part of the shop begins with a letter; whoever is called just as typed comes first.
    private const string UnweighedSql = $"""
        WITH hit AS MATERIALIZED (
          SELECT key, MIN(place) AS place
          FROM (SELECT * FROM (SELECT rowid AS key, 0 AS place FROM search WHERE search MATCH @whole LIMIT @Most)
                UNION ALL
                SELECT * FROM (SELECT rowid, 1 FROM search WHERE search MATCH @words LIMIT @Most))
          GROUP BY key ORDER BY 2 LIMIT @Most),
        {OfHits}
        """;

    private const string OfHits = $"""
        line AS (
          SELECT h.place, p.client_id, p.id AS player_id, r.id AS racket_id
          FROM hit h JOIN racket r ON r.id = h.key / 4 JOIN player p ON p.id = r.player_id
          WHERE h.key % 4 = 2
          UNION ALL
          SELECT h.place, p.client_id, p.id, r.id
          FROM hit h JOIN player p ON p.id = h.key / 4 LEFT JOIN racket r ON r.player_id = p.id
          WHERE h.key % 4 = 1
          UNION ALL
          SELECT h.place, h.key / 4, p.id, r.id
          FROM hit h LEFT JOIN player p ON p.client_id = h.key / 4 LEFT JOIN racket r ON r.player_id = p.id
          WHERE h.key % 4 = 0)
        SELECT {Columns}
        FROM (SELECT client_id, player_id, racket_id, MIN(place) AS place FROM line GROUP BY client_id, player_id, racket_id) l
        JOIN client c ON c.id = l.client_id
        LEFT JOIN player p ON p.id = l.player_id
        LEFT JOIN racket r ON r.id = l.racket_id
        ORDER BY MIN(l.place) OVER (PARTITION BY l.client_id), c.name_key, c.id, p.name_key, p.id, r.number
        LIMIT @Most
        """;

    /// <summary>Clients one of whose phone numbers ends in these digits.</summary>
    public IReadOnlyList<SearchRow> ByPhone(string end) =>
        database.Read(c => c.Query<SearchRow>(ByPhoneSql, new { backwards = string.Concat(end.Reverse()), Most }).ToList());

    // Digits come before a colon, and a plus, which ends a number read backwards, before digits.
    internal static readonly string ByPhoneSql = $"""
        WITH hit AS MATERIALIZED (
          SELECT f.id FROM client f WHERE f.phone IS NOT NULL AND {Backwards("f.phone")} BETWEEN @backwards AND @backwards || ':'
          UNION
          SELECT s.id FROM client s WHERE s.second_phone IS NOT NULL AND {Backwards("s.second_phone")} BETWEEN @backwards AND @backwards || ':')
        SELECT {Columns}
        FROM hit h
        CROSS JOIN client c ON c.id = h.id
        LEFT JOIN player p ON p.client_id = c.id
        LEFT JOIN racket r ON r.player_id = p.id
        ORDER BY c.name_key, c.id, p.name_key, p.id, r.number
        LIMIT @Most
        """;

    /// <summary>SQL: a phone number backwards, as the schema's indexes have it.</summary>
    private static string Backwards(string phone) => string.Join(" || ", Enumerable.Range(1, 15).Select(place => $"substr({phone}, -{place}, 1)"));

    public SearchRow? ByTicket(long ticket) => database.Read(c => c.QuerySingleOrDefault<SearchRow>(ByTicketSql, new { ticket }));

    private const string ByTicketSql = $"""
        SELECT {Columns}, j.id AS job_id, j.ticket
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE j.ticket = @ticket
        """;

    public sealed record TagRow
    {
        public TagCode Code { get; init; }
        public TagState State { get; init; }
        public long? RacketId { get; init; }
        public string? Player { get; init; }
        public int? Number { get; init; }
    }

    public enum TagState { Unassigned, Live, Retired }

    public TagRow? ByTag(TagCode code) => database.Read(c => c.QuerySingleOrDefault<TagRow>(ByTagSql, new { code }));

    private const string ByTagSql = """
        SELECT t.code, t.state, t.racket_id, p.name AS player, r.number
        FROM tag t
        LEFT JOIN racket r ON r.id = t.racket_id
        LEFT JOIN player p ON p.id = r.player_id
        WHERE t.code = @code
        """;

    /// <summary>If more match, there were too few characters.</summary>
    public const int MostTags = 10;

    /// <summary>The tags whose codes begin with these characters, which are of a code's alphabet.</summary>
    public IReadOnlyList<TagRow> ByTagBegin(string begin) => database.Read(c => c.Query<TagRow>(ByTagBeginSql, new { begin, MostTags }).ToList());

    private const string ByTagBeginSql = """
        SELECT t.code, t.state, t.racket_id, p.name AS player, r.number
        FROM tag t
        LEFT JOIN racket r ON r.id = t.racket_id
        LEFT JOIN player p ON p.id = r.player_id
        WHERE t.code BETWEEN @begin AND @begin || 'ZZZZZZZZZZ'
        ORDER BY t.code
        LIMIT @MostTags
        """;
}
