using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>What lies at the bench, and what came in on a day.</summary>
public sealed class BenchStore(Database database)
{
    /// <summary>More than this many lines of one kind are not a bench any more.</summary>
    public const int Most = 200;

    private const string Columns = """
        j.id, j.ticket, j.state, j.racket_id, r.number, r.frame, r.tape_colour, p.name AS player, c.name AS client, c.phone,
        m.name AS mains, m.gauge_mm AS mains_gauge_mm, x.name AS crosses, x.gauge_mm AS crosses_gauge_mm,
        j.mains_tension, j.crosses_tension, j.tension_unit, j.promised_for, j.strung_on, j.price_minor, j.paid_on,
        j.wish, j.expected, j.asked_by_client, j.drop_off_where, j.drop_off_by, j.needed_by
        """;

    private const string Sources = """
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        JOIN string_kind m ON m.id = j.mains_id
        JOIN string_kind x ON x.id = j.crosses_id
        """;

    /// <summary>On the machine first, then what waits: by the day it is promised for, then by ticket; what is still to be brought last.</summary>
    public IReadOnlyList<BenchRow> Open() => database.Read(c => c.Query<BenchRow>(OpenSql, new { Most }).ToList());

    private const string OpenSql = $"""
        SELECT {Columns}
        {Sources}
        WHERE j.state IN ('Waiting', 'OnMachine', 'Strung') AND j.state <> 'Strung'
        ORDER BY j.expected, j.state, j.promised_for IS NULL, j.promised_for, j.ticket
        LIMIT @Most
        """;

    /// <summary>Strung and not collected yet, the longest waiting first.</summary>
    public IReadOnlyList<BenchRow> Ready() => database.Read(c => c.Query<BenchRow>(ReadySql, new { Most }).ToList());

    private const string ReadySql = $"""
        SELECT {Columns}
        {Sources}
        WHERE j.state IN ('Waiting', 'OnMachine', 'Strung') AND j.state = 'Strung'
        ORDER BY j.strung_on, j.ticket
        LIMIT @Most
        """;

    public IReadOnlyList<BenchRow> CameIn(DateOnly day) => database.Read(c => c.Query<BenchRow>(CameInSql, new { day, Most }).ToList());

    private const string CameInSql = $"""
        SELECT {Columns}
        {Sources}
        WHERE j.received_on = @day AND j.state <> 'Cancelled' AND j.expected = 0
        ORDER BY j.ticket DESC
        LIMIT @Most
        """;

    /// <summary>What a fresh shop lacks.</summary>
    public sealed record Beginning
    {
        public bool HasStrings { get; init; }
        public bool HasRackets { get; init; }

        public bool IsOver => HasStrings && HasRackets;
    }

    public Beginning Begun() => database.Read(c => c.QuerySingle<Beginning>(BegunSql));

    private const string BegunSql = """
        SELECT EXISTS (SELECT 1 FROM string_kind) AS has_strings, EXISTS (SELECT 1 FROM racket) AS has_rackets
        """;
}
