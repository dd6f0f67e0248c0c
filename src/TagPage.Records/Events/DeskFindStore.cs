using Dapper;
using TagPage.Core.Sports;
using TagPage.Core.Tags;
using TagPage.Records.Search;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>Finds whose racket comes to the desk. A helper finds the racket whose tag they hold, and players who were there before.</summary>
public sealed class DeskFindStore(Database database)
{
    public sealed record Row
    {
        public long RacketId { get; init; }
        public int RacketNumber { get; init; }
        public string Frame { get; init; } = "";
        public string TapeColour { get; init; } = "";
        public Sport Sport { get; init; }
        public long PlayerId { get; init; }
        public string Player { get; init; } = "";
        public bool Junior { get; init; }
        public string LabelName { get; init; } = "";

        /// <summary>The last number that a racket of the player's was given here.</summary>
        public int? LastNumber { get; init; }
        public string Client { get; init; } = "";

        /// <summary>The racket's number at this desk, if it is there.</summary>
        public int? DeskNumber { get; init; }
    }

    /// <summary>By the code of its tag.</summary>
    public Row? ByTag(Who who, long eventId, TagCode code) => database.Read(c =>
        EventStore.Get(c, who, eventId) is null ? null : c.QuerySingleOrDefault<Row>(ByTagSql, new { eventId, code }));

    private const string Columns = """
        SELECT r.id AS racket_id, r.number AS racket_number, r.frame, r.tape_colour, r.sport, p.id AS player_id, p.name AS player, p.junior, p.label_name, k.name AS client,
               (SELECT MAX(e.number) FROM event_entry e JOIN job j ON j.id = e.job_id JOIN racket o ON o.id = j.racket_id
                WHERE e.event_id = @eventId AND o.player_id = p.id) AS last_number,
               (SELECT MAX(e.number) FROM event_entry e JOIN job j ON j.id = e.job_id
                WHERE e.event_id = @eventId AND j.racket_id = r.id AND j.state IN ('Waiting', 'OnMachine', 'Strung')) AS desk_number
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN client k ON k.id = p.client_id
        """;

    private const string ByTagSql = $"""
        {Columns}
        JOIN tag t ON t.racket_id = r.id AND t.state = 'Live'
        WHERE t.code = @code AND r.state NOT IN ('Sold', 'Gone')
        """;

    /// <summary>By a player's or client's name.</summary>
    public IReadOnlyList<Row> ByName(Who who, long eventId, string? typed) => database.Read(c =>
        SearchWords.Of(typed) is { } words && EventStore.Get(c, who, eventId) is not null
            ? c.Query<Row>(ByNameSql, new { who.IsShop, eventId, Words = words }).ToList()
            : []);

    private const string ByNameSql = $"""
        WITH hit AS (SELECT rowid / 4 AS id, rowid % 4 AS kind FROM search WHERE search MATCH @Words LIMIT 500)
        {Columns}
        WHERE r.state NOT IN ('Sold', 'Gone')
          AND (p.id IN (SELECT id FROM hit WHERE kind = 1) OR k.id IN (SELECT id FROM hit WHERE kind = 0))
          AND (@IsShop OR EXISTS (SELECT 1 FROM event_entry e JOIN job j ON j.id = e.job_id JOIN racket o ON o.id = j.racket_id
                                  WHERE e.event_id = @eventId AND o.player_id = r.player_id))
        ORDER BY p.name_key, p.id, r.number
        LIMIT 40
        """;

    /// <summary>What was done for a racket's player at this event last: the next round asks for the same.</summary>
    public EntryRow? LastRound(Who who, long eventId, long racket) => database.Read(c =>
        EventStore.Get(c, who, eventId) is null ? null : c.QueryFirstOrDefault<EntryRow>(LastRoundSql, new { eventId, racket }));

    private const string LastRoundSql = EntryRow.Select + """
         WHERE e.event_id = @eventId AND p.id = (SELECT player_id FROM racket WHERE id = @racket) AND j.state <> 'Cancelled'
        ORDER BY (j.racket_id = @racket) DESC, e.number DESC
        LIMIT 1
        """;
}
