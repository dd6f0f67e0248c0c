using Dapper;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>Bills for a month, numbered without gaps within their year. The shop alone writes and sees them.</summary>
public sealed class BillStore(Database database, ShopStore shops, ShopClock clock)
{
    /// <summary>A month with rackets that stand on no bill yet.</summary>
    public sealed record Month
    {
        public DateOnly FromOn { get; init; }
        public int Jobs { get; init; }
        public long TotalMinor { get; init; }
    }

    public IReadOnlyList<Month> Months(Who who, Party party) => database.Read(c => c.Query<Month>(MonthsSql, new { who.IsOwner, party.ClientId, party.PayerId }).AsList());

    private const string Unbilled = $"""
        FROM client c
        JOIN player p ON p.client_id = c.id
        JOIN racket r ON r.player_id = p.id
        JOIN job j ON j.racket_id = r.id
        WHERE ((c.id = @ClientId AND c.payer_id IS NULL) OR c.payer_id = @PayerId) AND @IsOwner AND COALESCE(j.strung_on, j.done_on) IS NOT NULL AND j.price_minor > 0
          AND {BillLineStore.StandsOnNone}
        """;

    private const string MonthsSql = $"""
        SELECT substr(COALESCE(j.strung_on, j.done_on), 1, 7) || '-01' AS from_on, COUNT(*) AS jobs, SUM(j.price_minor) AS total_minor
        {Unbilled}
        GROUP BY 1
        ORDER BY 1 DESC
        LIMIT 24
        """;

    /// <summary>All bills of a party, the newest first.</summary>
    public IReadOnlyList<BillRow> Of(Who who, Party party) => database.Read(c => c.Query<BillRow>(OfSql, new { who.IsOwner, party.ClientId, party.PayerId }).AsList());

    private const string OfSql = $"{BillRow.Select} WHERE (b.client_id = @ClientId OR b.payer_id = @PayerId) AND @IsOwner ORDER BY b.id DESC LIMIT 200";

    public BillRow? Get(Who who, long id) => database.Read(c =>
        c.QuerySingleOrDefault<BillRow>(GetSql, new { who.IsOwner, id }) is { } bill ? bill with { Lines = c.Query<BillLine>(LinesSql, new { id }).AsList() } : null);

    internal const string GetSql = $"{BillRow.Select} WHERE b.id = @id AND @IsOwner";

    private const string LinesSql = """
        SELECT l.job_id, l.prepaid_id, s.restrings, s.covers, l.ticket, l.strung_on, l.is_visit, l.whose, l.racket, l.desk, l.kind, l.words, l.centimetres, l.metre_minor, l.amount_minor, l.tax_bp
        FROM bill_line l
        LEFT JOIN prepaid s ON s.id = l.prepaid_id
        WHERE l.bill_id = @id
        ORDER BY l.position
        """;

    /// <summary>Of a party's rackets strung in a month, as far as they stand on no bill. Done tells the bill.</summary>
    /// <param name="who">Only the shop may.</param>
    /// <param name="party">Whose bill it is.</param>
    /// <param name="month">Any day of it.</param>
    public Outcome Make(Who who, Party party, DateOnly month)
    {
        var (now, today) = (clock.Now, clock.Today);
        var from = new DateOnly(month.Year, month.Month, 1);
        // Of the last month there is, nobody can say when it ends.
        var to = from.Year == DateOnly.MaxValue.Year ? from : from.AddMonths(1).AddDays(-1);
        return database.WriteAsOwner(who, c =>
        {
            if (c.QuerySingleOrDefault<Addressed>(ToSql, new { party.ClientId, party.PayerId }) is not { } addressed)
                return new Outcome.Absent();
            var shop = shops.Get();
            var values = new { who.IsOwner, party.ClientId, party.PayerId, from, to };
            var lines = c.Query<BillLine>(NewLinesSql, values).AsList();
            if (lines.Count == 0)
                return new Outcome.Refused(new NothingToBill());
            return new Outcome.Done(BillLineStore.Write(c, new BillHead(party.ClientId, party.PayerId, addressed.Name, "", from, to) { Language = addressed.Language ?? shop.Language }, lines, shop, who, (now, today)));
        });
    }

    private sealed record Addressed
    {
        public string Name { get; init; } = "";

        /// <summary>Null where none is on file: then the shop’s.</summary>
        public string? Language { get; init; }
    }

    private const string ToSql = "SELECT name, language FROM client WHERE id = @ClientId UNION ALL SELECT name, NULL FROM payer WHERE id = @PayerId";

    private const string NewLinesSql = $"""
        SELECT n.id AS job_id, n.ticket, n.strung_on, n.is_visit, n.whose, n.racket, h.kind, h.words, h.centimetres, h.metre_minor, h.amount_minor, h.tax_bp
        FROM (SELECT j.id, j.ticket, COALESCE(j.strung_on, j.done_on) AS strung_on, j.done_on IS NOT NULL AS is_visit, p.name AS whose, r.number AS racket {Unbilled} AND COALESCE(j.strung_on, j.done_on) BETWEEN @from AND @to) n
        JOIN charge h ON h.job_id = n.id
        ORDER BY n.strung_on, n.id, h.id
        """;

    /// <summary>Of restrings that were sold in advance, as long as they stand on no bill and were not taken back. Done tells the bill.</summary>
    public Outcome MakePrepaid(Who who, Party party, long prepaid)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteAsOwner(who, c =>
        {
            var values = new { who.IsOwner, party.ClientId, party.PayerId, prepaid };
            if (c.QuerySingleOrDefault<Addressed>(ToSql, values) is not { } addressed || !c.ExecuteScalar<bool>(IsTheirsSql, values))
                return new Outcome.Absent();
            if (c.Query<BillLine>(PrepaidLinesSql, values).AsList() is not [var line])
                return new Outcome.Refused(new NothingToBill());
            var shop = shops.Get();
            var head = new BillHead(party.ClientId, party.PayerId, addressed.Name, "", line.StrungOn, line.StrungOn) { Language = addressed.Language ?? shop.Language };
            return new Outcome.Done(BillLineStore.Write(c, head, [line], shop, who, (now, today)));
        });
    }

    private const string IsTheirsSql = "SELECT EXISTS (SELECT 1 FROM prepaid WHERE id = @prepaid AND (client_id = @ClientId OR payer_id = @PayerId))";

    private const string PrepaidLinesSql = $"""
        SELECT p.id AS prepaid_id, p.bought_on AS strung_on, 'Prepaid' AS kind, p.amount_minor, p.tax_bp
        FROM prepaid p
        WHERE p.id = @prepaid AND @IsOwner AND NOT EXISTS (SELECT 1 FROM payment u WHERE u.undoes_id = p.payment_id)
          AND NOT {BillLineStore.HasSale}
        """;

    /// <summary>Cancels a bill by another one with its amounts below zero; its rackets can be billed again. Done tells the new one.</summary>
    public Outcome Cancel(Who who, long id)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteAsOwner(who, c =>
        {
            if (c.QuerySingleOrDefault<BillRow>(GetSql, new { who.IsOwner, id }) is not { } bill)
                return new Outcome.Absent();
            if (bill.CancelsId is not null || bill.CancelledById is not null)
                return new Outcome.Refused(new CancelledAlready());
            var shop = c.ExecuteScalar<string>("SELECT shop FROM bill WHERE id = @id", new { id })!;
            return new Outcome.Done(BillLineStore.Counter(c, bill, shop, c.Query<BillLine>(LinesSql, new { id }), who, (now, today)));
        });
    }
}
