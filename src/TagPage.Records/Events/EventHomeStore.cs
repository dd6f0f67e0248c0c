using Dapper;
using TagPage.Core.Money;
using TagPage.Core.Rackets;
using TagPage.Core.Strings;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>What a laptop at an event takes home: what was strung there, and whose it was. The shop's own.</summary>
public sealed class EventHomeStore(Database database)
{
    /// <summary>A racket of the event with what its entry does not say.</summary>
    public sealed record Row
    {
        public int Number { get; init; }
        public long ClientId { get; init; }
        public string Client { get; init; } = "";
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public string Language { get; init; } = "";
        public bool Reminders { get; init; }
        public RacketState RacketState { get; init; }
        public Material MainsMaterial { get; init; }
        public Material CrossesMaterial { get; init; }
        public string Machine { get; init; } = "";
        public DateOnly ReceivedOn { get; init; }
        public DateOnly StrungOn { get; init; }
        public DateOnly? CollectedOn { get; init; }

        /// <summary>Of its newest payment.</summary>
        public PaymentMethod? PaidHow { get; init; }
    }

    /// <summary>Everything strung at an event, by desk number; null for everybody but the shop.</summary>
    public IReadOnlyList<(EntryRow Entry, Row Beside)>? Get(Who who, long eventId) => database.Read(c =>
    {
        if (!who.IsOwner || EventStore.Get(c, who, eventId) is null)
            return null;
        var entries = c.Query<EntryRow>(EntriesSql, new { eventId }).ToDictionary(entry => entry.Number);
        return c.Query<Row>(RowsSql, new { eventId }).Select(row => (entries[row.Number], row)).ToList();
    });

    private const string EntriesSql = EntryRow.Select + " WHERE e.event_id = @eventId AND j.state IN ('Strung', 'Collected')";

    private const string RowsSql = """
        SELECT e.number, c.id AS client_id, c.name AS client, c.phone, c.mail, c.language, c.reminders, r.state AS racket_state,
               m.material AS mains_material, x.material AS crosses_material, j.machine, j.received_on, j.strung_on, j.collected_on,
               (SELECT p.method FROM payment_share s JOIN payment p ON p.id = s.payment_id
                WHERE s.job_id = j.id AND p.undoes_id IS NULL ORDER BY p.id DESC LIMIT 1) AS paid_how
        FROM event_entry e
        JOIN job j ON j.id = e.job_id
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        JOIN string_kind m ON m.id = j.mains_id
        JOIN string_kind x ON x.id = j.crosses_id
        WHERE e.event_id = @eventId AND j.state IN ('Strung', 'Collected')
        ORDER BY e.number
        """;
}
