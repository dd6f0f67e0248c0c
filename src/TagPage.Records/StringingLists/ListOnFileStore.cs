using System.Text.Json;
using Dapper;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Storage;

namespace TagPage.Records.StringingLists;

/// <summary>What the shop has of clients who are in a list: looked at before it comes in.</summary>
public sealed class ListOnFileStore(Database database)
{
    public sealed record Player
    {
        public long Id { get; init; }
        public long ClientId { get; init; }
        public string Name { get; init; } = "";
    }

    public sealed record Racket
    {
        public long Id { get; init; }
        public long PlayerId { get; init; }
        public int Number { get; init; }
        public string Frame { get; init; } = "";
        public string TapeColour { get; init; } = "";
        public Sport Sport { get; init; }
    }

    /// <summary>A stringing, as far as another would be the same.</summary>
    public sealed record Stringing
    {
        public long RacketId { get; init; }
        public DateOnly StrungOn { get; init; }
        public string MainsName { get; init; } = "";
        public decimal MainsGaugeMm { get; init; }
        public string CrossesName { get; init; } = "";
        public decimal CrossesGaugeMm { get; init; }
        public decimal MainsTension { get; init; }
        public decimal CrossesTension { get; init; }
        public TensionUnit TensionUnit { get; init; }
    }

    /// <summary>A client, as far as something may be missing there.</summary>
    public sealed record Client
    {
        public long Id { get; init; }
        public string? Phone { get; init; }
        public string? Mail { get; init; }
    }

    public sealed record Found(IReadOnlyList<Client> Clients, IReadOnlyList<Player> Players, IReadOnlyList<Racket> Rackets, IReadOnlyList<Stringing> Stringings);

    public Found Of(IEnumerable<long> clients) => database.Read(c =>
    {
        var ids = new { ids = JsonSerializer.Serialize(clients.Distinct()) };
        return new Found(c.Query<Client>(ClientsSql, ids).AsList(), c.Query<Player>(PlayersSql, ids).AsList(), c.Query<Racket>(RacketsSql, ids).AsList(), c.Query<Stringing>(StringingsSql, ids).AsList());
    });

    private const string ClientsSql = "SELECT id, phone, mail FROM client WHERE id IN (SELECT value FROM json_each(@ids))";

    private const string PlayersSql = "SELECT id, client_id, name FROM player WHERE client_id IN (SELECT value FROM json_each(@ids)) ORDER BY id";

    private const string RacketsSql = """
        SELECT r.id, r.player_id, r.number, r.frame, r.tape_colour, r.sport
        FROM racket r
        JOIN player p ON p.id = r.player_id
        WHERE p.client_id IN (SELECT value FROM json_each(@ids))
        ORDER BY r.player_id, r.number
        """;

    private const string StringingsSql = """
        SELECT j.racket_id, j.strung_on, m.name AS mains_name, m.gauge_mm AS mains_gauge_mm, x.name AS crosses_name, x.gauge_mm AS crosses_gauge_mm,
               j.mains_tension, j.crosses_tension, j.tension_unit
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN string_kind m ON m.id = j.mains_id
        JOIN string_kind x ON x.id = j.crosses_id
        WHERE p.client_id IN (SELECT value FROM json_each(@ids)) AND j.strung_on IS NOT NULL
        """;

    /// <summary>Ticket numbers that are or were given to jobs.</summary>
    public IReadOnlySet<int> TakenTickets() => database.Read(c => c.Query<int>("SELECT ticket FROM job UNION SELECT ticket FROM past_job UNION SELECT ticket FROM deleted_ticket").ToHashSet());
}
