using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>
/// Bills of an event, for a player or for a country or club, under the shop's own numbers. What stands on a bill that holds
/// stands on no other, also not on that of the month. The shop alone writes and sees them.
/// </summary>
public sealed class EventBillStore(Database database, ShopStore shops, ShopClock clock)
{
    /// <summary>Which bill a racket of the event stands on.</summary>
    public sealed record Billed(int Number, long BillId, string BillName);

    public IReadOnlyList<Billed> Of(Who who, long eventId) => database.Read(c =>
        c.Query<(int Number, long Bill, int Year, int BillNumber)>(OfSql, new { who.IsOwner, eventId }).Select(row => new Billed(row.Number, row.Bill, BillRow.NameOf(row.Year, row.BillNumber))).ToList());

    private const string OfSql = $"""
        SELECT DISTINCT e.number, b.id, b.year, b.number
        FROM event_entry e
        JOIN bill_line l ON l.job_id = e.job_id
        JOIN bill b ON b.id = l.bill_id
        WHERE e.event_id = @eventId AND @IsOwner AND {BillLineStore.Holds}
        """;

    /// <summary>Who pays for a player of the event.</summary>
    public string? PayerOf(Who who, long eventId, long playerId) => database.Read(c =>
        c.QuerySingleOrDefault<Payer>(PayerSql, new { who.IsOwner, eventId, playerId })?.Name);

    private sealed record Payer
    {
        public long? ClientId { get; init; }
        public long? PayerId { get; init; }
        public string Name { get; init; } = "";

        /// <summary>Null for somebody who pays for others.</summary>
        public string? Language { get; init; }
    }

    private const string PayerSql = """
        SELECT CASE WHEN y.id IS NULL THEN c.id END AS client_id, y.id AS payer_id, COALESCE(y.name, c.name) AS name, CASE WHEN y.id IS NULL THEN c.language END AS language
        FROM player p
        JOIN client c ON c.id = p.client_id
        LEFT JOIN payer y ON y.id = c.payer_id
        WHERE p.id = @playerId AND @IsOwner
          AND EXISTS (SELECT 1 FROM event_entry e JOIN job j ON j.id = e.job_id JOIN racket r ON r.id = j.racket_id WHERE e.event_id = @eventId AND r.player_id = p.id)
        """;

    /// <summary>Of all that was strung and stands on no bill. Done tells the bill.</summary>
    public Outcome Make(Who who, long eventId, EventBillEntry input) => database.WriteAsOwner(who, c =>
    {
        var payer = c.QuerySingleOrDefault<Payer>(PayerSql, new { who.IsOwner, eventId, playerId = input.Whose.PlayerId });
        if (EventStore.Get(c, who, eventId) is null || (payer is null && string.IsNullOrEmpty(input.Whose.Team)))
            return new Outcome.Absent();
        return FormKeys.Once(c, who, input.FormKey, clock.Now, () =>
        {
            var lines = c.Query<BillLine>(LinesSql, new { who.IsOwner, eventId, input.Whose.PlayerId, Teams = Spellings(c, eventId, input.Whose), input.TeamToo }).AsList();
            if (lines.Count == 0)
                return new Outcome.Refused(new NothingToBill());
            var shop = shops.Get();
            var head = new BillHead(payer?.ClientId, payer?.PayerId, input.ToName, Lines(input.ToAddress), lines.Min(line => line.StrungOn), lines.Max(line => line.StrungOn)) { Language = payer?.Language ?? shop.Language };
            return new Outcome.Done(BillLineStore.Write(c, head, lines, shop, who, (clock.Now, clock.Today)));
        });
    });

    // Nobody spells a team alike.
    private static List<string> Spellings(SqliteConnection connection, long eventId, EventParty whose) => whose.Team is not { } team ? []
        : [.. connection.Query<string>("SELECT DISTINCT team FROM event_entry WHERE event_id = @eventId", new { eventId }).Where(other => TeamName.KeyOf(other) == TeamName.KeyOf(team))];

    private static string Lines(string? typed) =>
        string.Join('\n', (typed ?? "").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));

    // A team's bill goes to whoever looks after the team: a junior stands on it as on a label.
    private const string LinesSql = $"""
        SELECT j.id AS job_id, j.ticket, j.strung_on, h.kind, h.words, h.centimetres, h.metre_minor, h.amount_minor, h.tax_bp,
               CASE WHEN @PlayerId IS NULL AND p.junior THEN p.label_name ELSE p.name END AS whose, r.number AS racket, e.number AS desk
        FROM event_entry e
        JOIN job j ON j.id = e.job_id
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN charge h ON h.job_id = j.id
        WHERE e.event_id = @eventId AND @IsOwner AND (e.team IN @Teams OR (p.id = @PlayerId AND (@TeamToo OR e.team = '')))
          AND j.state IN ('Strung', 'Collected') AND j.price_minor > 0 AND {BillLineStore.StandsOnNone}
        ORDER BY e.number, h.id
        """;

    /// <summary>Everything of theirs that was strung and is not paid is paid at once, each racket on its own player's account; done twice it is done.</summary>
    public Outcome Pay(Who who, long eventId, EventParty whose, PaymentMethod method) => database.WriteAsOwner(who, c =>
    {
        if (EventStore.Get(c, who, eventId) is null)
            return new Outcome.Absent();
        var owed = c.Query<long>(OwedSql, new { who.IsOwner, eventId, whose.PlayerId, Teams = Spellings(c, eventId, whose) }).AsList();
        if (owed.Count == 0)
            return new Outcome.Refused(new NothingToPay());
        foreach (var job in owed)
            PaymentLineStore.Pay(c, ShareStore.Of(c, job)!, new PaymentEntry { PaidOn = clock.Today, Method = method, Note = whose.Team }, who, (clock.Now, clock.Today));
        return new Outcome.Done(owed.Count);
    });

    private const string OwedSql = """
        SELECT j.id
        FROM event_entry e
        JOIN job j ON j.id = e.job_id
        JOIN racket r ON r.id = j.racket_id
        WHERE e.event_id = @eventId AND @IsOwner AND (e.team IN @Teams OR r.player_id = @PlayerId)
          AND j.state IN ('Strung', 'Collected') AND j.price_minor > 0 AND j.paid_on IS NULL
        ORDER BY e.number
        """;
}
