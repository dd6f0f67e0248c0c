using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
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

    public IReadOnlyList<Month> Months(Who who, Party party) => database.Read(c => c.Query<Month>(MonthsSql, new { who.IsShop, party.ClientId, party.PayerId }).AsList());

    private const string Unbilled = """
        FROM client c
        JOIN player p ON p.client_id = c.id
        JOIN racket r ON r.player_id = p.id
        JOIN job j ON j.racket_id = r.id
        WHERE ((c.id = @ClientId AND c.payer_id IS NULL) OR c.payer_id = @PayerId) AND @IsShop AND j.strung_on IS NOT NULL AND j.price_minor > 0
          AND NOT EXISTS (SELECT 1 FROM bill_line l JOIN bill b ON b.id = l.bill_id
                          WHERE l.job_id = j.id AND b.cancels_id IS NULL AND NOT EXISTS (SELECT 1 FROM bill x WHERE x.cancels_id = b.id))
        """;

    private const string MonthsSql = $"""
        SELECT substr(j.strung_on, 1, 7) || '-01' AS from_on, COUNT(*) AS jobs, SUM(j.price_minor) AS total_minor
        {Unbilled}
        GROUP BY 1
        ORDER BY 1 DESC
        LIMIT 24
        """;

    /// <summary>All bills of a party, the newest first.</summary>
    public IReadOnlyList<BillRow> Of(Who who, Party party) => database.Read(c => c.Query<BillRow>(OfSql, new { who.IsShop, party.ClientId, party.PayerId }).AsList());

    private const string OfSql = $"{BillRow.Select} WHERE (b.client_id = @ClientId OR b.payer_id = @PayerId) AND @IsShop ORDER BY b.id DESC LIMIT 200";

    public BillRow? Get(Who who, long id) => database.Read(c =>
        c.QuerySingleOrDefault<BillRow>(GetSql, new { who.IsShop, id }) is { } bill ? bill with { Lines = c.Query<BillLine>(LinesSql, new { id }).AsList() } : null);

    internal const string GetSql = $"{BillRow.Select} WHERE b.id = @id AND @IsShop";

    private const string LinesSql = """
        SELECT job_id, ticket, strung_on, whose, kind, words, amount_minor, tax_bp FROM bill_line WHERE bill_id = @id ORDER BY position
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
        return database.WriteAsShop(who, c =>
        {
            if (c.ExecuteScalar<string?>(NameSql, new { party.ClientId, party.PayerId }) is not { } name)
                return new Outcome.Absent();
            var values = new { who.IsShop, party.ClientId, party.PayerId, from, to };
            var lines = c.Query<BillLine>(NewLinesSql, values).AsList();
            if (lines.Count == 0)
                return new Outcome.Refused(new NothingToBill());
            var paid = c.ExecuteScalar<long>(PaidSql, new { ids = JsonSerializer.Serialize(lines.Select(line => line.JobId).Distinct()) });
            var bill = Number(c, new { party.ClientId, party.PayerId, name, values.from, values.to, today, today.Year, Shop = Sender(c), shops.Get().Currency, paid, cancels = (long?)null, now, who.Name });
            Write(c, bill, lines);
            return new Outcome.Done(bill);
        });
    }

    private const string NameSql = "SELECT name FROM client WHERE id = @ClientId UNION ALL SELECT name FROM payer WHERE id = @PayerId";

    private const string NewLinesSql = $"""
        SELECT n.id AS job_id, n.ticket, n.strung_on, n.whose, h.kind, h.words, h.amount_minor, h.tax_bp
        FROM (SELECT j.id, j.ticket, j.strung_on, p.name || ', ' || r.number AS whose {Unbilled} AND j.strung_on BETWEEN @from AND @to) n
        JOIN charge h ON h.job_id = n.id
        ORDER BY n.strung_on, n.id, h.id
        """;

    private const string PaidSql = """
        SELECT COALESCE(SUM(amount_minor), 0) FROM payment_share WHERE job_id IN (SELECT value FROM json_each(@ids))
        """;

    private string Sender(SqliteConnection connection)
    {
        var (shop, list) = (shops.Get(), PriceListStore.Get(connection));
        return JsonSerializer.Serialize(new BillSender
        {
            Name = shop.Name,
            Street = shop.Street,
            Town = shop.Town,
            Phone = shop.Phone,
            Mail = shop.Mail,
            TaxNumber = list.TaxNumber,
            Iban = list.Iban,
            AccountName = list.AccountName.Length > 0 ? list.AccountName : shop.Name,
        });
    }

    /// <summary>Within the transaction nobody else takes the next number, and one that is rolled back was never given.</summary>
    private static long Number(SqliteConnection connection, object values) => connection.ExecuteScalar<long>(NumberSql, values);

    private const string NumberSql = """
        INSERT INTO bill (year, number, client_id, payer_id, to_name, from_on, to_on, issued_on, shop, currency, paid_minor, cancels_id, made_at, made_by)
        VALUES (@Year, (SELECT COALESCE(MAX(number), 0) + 1 FROM bill WHERE year = @Year), @ClientId, @PayerId, @name, @from, @to, @today, @Shop, @Currency, @paid,
                @cancels, @now, @Name)
        RETURNING id
        """;

    private static void Write(SqliteConnection connection, long bill, IEnumerable<BillLine> lines) => connection.Execute(LineSql, lines.Select((line, i) => new
    {
        bill,
        Position = i + 1,
        line.JobId,
        line.Ticket,
        line.StrungOn,
        line.Whose,
        Kind = line.Kind.ToString(),
        line.Words,
        line.AmountMinor,
        line.TaxBp,
    }));

    private const string LineSql = """
        INSERT INTO bill_line (bill_id, position, job_id, ticket, strung_on, whose, kind, words, amount_minor, tax_bp)
        VALUES (@bill, @Position, @JobId, @Ticket, @StrungOn, @Whose, @Kind, @Words, @AmountMinor, @TaxBp)
        """;

    /// <summary>Cancels a bill by another one with its amounts below zero; its rackets can be billed again. Done tells the new one.</summary>
    public Outcome Cancel(Who who, long id)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteAsShop(who, c =>
        {
            if (c.QuerySingleOrDefault<BillRow>(GetSql, new { who.IsShop, id }) is not { } bill)
                return new Outcome.Absent();
            if (bill.CancelsId is not null || bill.CancelledById is not null)
                return new Outcome.Refused(new CancelledAlready());
            var shop = c.ExecuteScalar<string>("SELECT shop FROM bill WHERE id = @id", new { id });
            var counter = Number(c, new { bill.ClientId, bill.PayerId, name = bill.ToName, from = bill.FromOn, to = bill.ToOn, today, today.Year, Shop = shop, bill.Currency, paid = -bill.PaidMinor, cancels = (long?)id, now, who.Name });
            Write(c, counter, c.Query<BillLine>(LinesSql, new { id }).Select(line => line with { AmountMinor = -line.AmountMinor }));
            return new Outcome.Done(counter);
        });
    }
}
