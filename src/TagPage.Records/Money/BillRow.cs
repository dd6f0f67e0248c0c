using System.Text.Json;
using TagPage.Core.Money;

namespace TagPage.Records.Money;

/// <summary>A bill as it was written.</summary>
public sealed record BillRow
{
    /// <summary>SQL: everything of bills b but their lines, to be followed by a condition.</summary>
    internal const string Select = $"""
        SELECT b.id, b.year, b.number, b.client_id, b.payer_id, b.to_name, b.to_address, b.from_on, b.to_on, b.issued_on, b.shop AS sender_json, b.currency, b.language, b.paid_minor, b.cancels_id,
               (SELECT x.id FROM bill x WHERE x.cancels_id = b.id) AS cancelled_by_id, o.year AS cancels_year, o.number AS cancels_number,
               (SELECT SUM(l.amount_minor) FROM bill_line l WHERE l.bill_id = b.id) AS total_minor, COALESCE(y.mail, c.mail) AS mail,
               CASE WHEN {BillLineStore.Holds} THEN
                 (SELECT group_concat(d.ticket, ', ') FROM (
                   SELECT l.ticket
                   FROM bill_line l JOIN job j ON j.id = l.job_id
                   WHERE l.bill_id = b.id
                   GROUP BY l.job_id
                   HAVING SUM(l.amount_minor) <> COALESCE(j.price_minor, 0)
                   ORDER BY l.ticket) d)
               END AS changed_tickets,
               {BillLineStore.Holds} AND EXISTS (
                 SELECT 1
                 FROM bill_line l JOIN prepaid p ON p.id = l.prepaid_id JOIN payment u ON u.undoes_id = p.payment_id
                 WHERE l.bill_id = b.id) AS is_sale_undone
        FROM bill b
        LEFT JOIN bill o ON o.id = b.cancels_id
        LEFT JOIN client c ON c.id = b.client_id
        LEFT JOIN payer y ON y.id = b.payer_id
        """;

    public long Id { get; init; }
    public int Year { get; init; }
    public int Number { get; init; }
    public long? ClientId { get; init; }
    public long? PayerId { get; init; }

    /// <summary>Empty once their data was deleted.</summary>
    public string ToName { get; init; } = "";

    /// <summary>Line by line; empty for none.</summary>
    public string ToAddress { get; init; } = "";
    public DateOnly FromOn { get; init; }
    public DateOnly ToOn { get; init; }
    public DateOnly IssuedOn { get; init; }
    public string SenderJson { get; init; } = "{}";
    public string Currency { get; init; } = "";

    /// <summary>ISO 639-1: what it is written in.</summary>
    public string Language { get; init; } = "en";
    public long PaidMinor { get; init; }

    /// <summary>The bill that this one cancels, and that which cancels this one.</summary>
    public long? CancelsId { get; init; }
    public int? CancelsYear { get; init; }
    public int? CancelsNumber { get; init; }
    public long? CancelledById { get; init; }
    public long TotalMinor { get; init; }

    /// <summary>Those whose price is another one now, parted by commas; null for none, and for a bill that does not hold.</summary>
    public string? ChangedTickets { get; init; }

    /// <summary>It is of restrings sold in advance whose payment was taken back; false for a bill that does not hold.</summary>
    public bool IsSaleUndone { get; init; }

    /// <summary>Where it can be sent today.</summary>
    public string? Mail { get; init; }
    public IReadOnlyList<BillLine> Lines { get; init; } = [];

    /// <summary>2026-0007.</summary>
    public string Name => NameOf(Year, Number);

    public static string NameOf(int year, int number) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{year}-{number:0000}");

    public long ToPayMinor => TotalMinor - PaidMinor;

    public BillSender Sender => JsonSerializer.Deserialize<BillSender>(SenderJson) ?? new BillSender();

    public IReadOnlyList<TaxPart> Taxes => Tax.Of(Lines.Select(line => (line.AmountMinor, line.TaxBp)));
}

/// <summary>A line of a bill.</summary>
public sealed record BillLine
{
    public long? JobId { get; init; }

    /// <summary>Restrings sold in advance, how many and what each covers; then there is no ticket, and the day is that of the sale.</summary>
    public long? PrepaidId { get; init; }
    public int? Restrings { get; init; }
    public PrepaidCover? Covers { get; init; }
    public long? Ticket { get; init; }
    public DateOnly StrungOn { get; init; }

    /// <summary>Of work without new strings; then the day is that of the work.</summary>
    public bool IsVisit { get; init; }

    /// <summary>The player; empty for a junior on a team’s bill, and once their data was deleted.</summary>
    public string Whose { get; init; } = "";

    /// <summary>The racket’s number, and at an event its desk number; null once their data was deleted.</summary>
    public int? Racket { get; init; }
    public int? Desk { get; init; }
    public ChargeKind Kind { get; init; }
    public string Words { get; init; } = "";

    /// <summary>Of string by the metre, with the price of a metre; both null for everything else.</summary>
    public int? Centimetres { get; init; }
    public long? MetreMinor { get; init; }
    public long AmountMinor { get; init; }
    public int TaxBp { get; init; }
}

/// <summary>The shop as it stood on the bill.</summary>
public sealed record BillSender
{
    public string Name { get; init; } = "";
    public string Street { get; init; } = "";
    public string Town { get; init; } = "";

    /// <summary>Two letters; empty on bills from before it was kept.</summary>
    public string Country { get; init; } = "";
    public string? Phone { get; init; }
    public string? Mail { get; init; }
    public string TaxNumber { get; init; } = "";
    public string? Iban { get; init; }
    public string AccountName { get; init; } = "";
}
