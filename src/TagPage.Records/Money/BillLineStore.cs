using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>Whom a bill goes to, and for which days; at most one of the two is given.</summary>
internal sealed record BillHead(long? ClientId, long? PayerId, string Name, string Address, DateOnly From, DateOnly To)
{
    /// <summary>ISO 639-1.</summary>
    public string Language { get; init; } = "en";
}

/// <summary>Writes bills with their lines, under the next number. Runs in the caller's transaction.</summary>
internal static class BillLineStore
{
    /// <summary>SQL: no bill that holds has job j.</summary>
    internal const string StandsOnNone = $"""
        NOT EXISTS (SELECT 1 FROM bill_line l JOIN bill b ON b.id = l.bill_id WHERE l.job_id = j.id AND {Holds})
        """;

    /// <summary>SQL: a bill that holds has sale p of restrings paid in advance.</summary>
    internal const string HasSale = $"""
        EXISTS (SELECT 1 FROM bill_line l JOIN bill b ON b.id = l.bill_id WHERE l.prepaid_id = p.id AND {Holds})
        """;

    /// <summary>SQL: bill b neither cancels another nor is cancelled.</summary>
    internal const string Holds = "b.cancels_id IS NULL AND NOT EXISTS (SELECT 1 FROM bill x WHERE x.cancels_id = b.id)";

    /// <summary>The new bill's id.</summary>
    internal static long Write(SqliteConnection connection, BillHead head, IReadOnlyList<BillLine> lines, ShopDetails shop, Who who, (DateTimeOffset Now, DateOnly Today) at)
    {
        var paid = connection.ExecuteScalar<long>(PaidSql, new { jobs = Ids(lines.Select(line => line.JobId)), sales = Ids(lines.Select(line => line.PrepaidId)) });
        var bill = connection.ExecuteScalar<long>(NumberSql, new
        {
            head.ClientId,
            head.PayerId,
            head.Name,
            head.Address,
            head.From,
            head.To,
            at.Today,
            at.Today.Year,
            Shop = Sender(connection, shop),
            shop.Currency,
            head.Language,
            paid,
            cancels = (long?)null,
            at.Now,
            By = who.Name,
        });
        Add(connection, bill, lines);
        return bill;
    }

    private const string PaidSql = """
        SELECT (SELECT COALESCE(SUM(amount_minor), 0) FROM payment_share WHERE job_id IN (SELECT value FROM json_each(@jobs)))
             + (SELECT COALESCE(SUM(amount_minor), 0) FROM prepaid WHERE id IN (SELECT value FROM json_each(@sales)))
        """;

    private static string Ids(IEnumerable<long?> ids) => JsonSerializer.Serialize(ids.OfType<long>().Distinct());

    private static string Sender(SqliteConnection connection, ShopDetails shop)
    {
        var list = PriceListStore.Get(connection);
        return JsonSerializer.Serialize(new BillSender
        {
            Name = shop.Name,
            Street = shop.Street,
            Town = shop.Town,
            Country = shop.Country,
            Phone = shop.Phone,
            Mail = shop.Mail,
            TaxNumber = list.TaxNumber,
            Iban = list.Iban,
            AccountName = list.AccountName.Length > 0 ? list.AccountName : shop.Name,
        });
    }

    /// <summary>A bill that takes another one back, with the shop as it stood on that.</summary>
    internal static long Counter(SqliteConnection connection, BillRow bill, string shop, IEnumerable<BillLine> lines, Who who, (DateTimeOffset Now, DateOnly Today) at)
    {
        var counter = connection.ExecuteScalar<long>(NumberSql, new
        {
            bill.ClientId,
            bill.PayerId,
            Name = bill.ToName,
            Address = bill.ToAddress,
            From = bill.FromOn,
            To = bill.ToOn,
            at.Today,
            at.Today.Year,
            Shop = shop,
            bill.Currency,
            bill.Language,
            paid = -bill.PaidMinor,
            cancels = (long?)bill.Id,
            at.Now,
            By = who.Name,
        });
        Add(connection, counter, lines.Select(line => line with { AmountMinor = -line.AmountMinor }));
        return counter;
    }

    // Within the transaction nobody else takes the next number, and one that is rolled back was never given.
    private const string NumberSql = """
        INSERT INTO bill (year, number, client_id, payer_id, to_name, to_address, from_on, to_on, issued_on, shop, currency, language, paid_minor, cancels_id, made_at, made_by)
        VALUES (@Year, (SELECT COALESCE(MAX(number), 0) + 1 FROM bill WHERE year = @Year), @ClientId, @PayerId, @Name, @Address, @From, @To, @Today, @Shop, @Currency, @Language, @paid,
                @cancels, @Now, @By)
        RETURNING id
        """;

    private static void Add(SqliteConnection connection, long bill, IEnumerable<BillLine> lines) => connection.Execute(LineSql, lines.Select((line, i) => new
    {
        bill,
        Position = i + 1,
        line.JobId,
        line.PrepaidId,
        line.Ticket,
        line.StrungOn,
        line.IsVisit,
        line.Whose,
        line.Racket,
        line.Desk,
        Kind = line.Kind.ToString(),
        line.Words,
        line.Centimetres,
        line.MetreMinor,
        line.AmountMinor,
        line.TaxBp,
    }));

    private const string LineSql = """
        INSERT INTO bill_line (bill_id, position, job_id, prepaid_id, ticket, strung_on, is_visit, whose, racket, desk, kind, words, centimetres, metre_minor, amount_minor, tax_bp)
        VALUES (@bill, @Position, @JobId, @PrepaidId, @Ticket, @StrungOn, @IsVisit, @Whose, @Racket, @Desk, @Kind, @Words, @Centimetres, @MetreMinor, @AmountMinor, @TaxBp)
        """;
}
