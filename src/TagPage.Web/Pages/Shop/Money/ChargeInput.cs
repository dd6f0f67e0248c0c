using System.ComponentModel.DataAnnotations;
using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Money;

/// <summary>The lines of a job's price.</summary>
public sealed record ChargeInput
{
    public const int Most = 30;

    private const int Spare = 2;

    public int Version { get; init; }

    /// <summary>What the form asked about and the owner confirmed.</summary>
    public string? Confirmed { get; init; }

    [MaxLength(Most, ErrorMessage = "These are too many lines.")]
    public List<ChargeLineInput> Lines { get; init; } = [];

    /// <summary>With empty lines to add to.</summary>
    public static ChargeInput Of(int version, IEnumerable<ChargeLine> lines, ShopDetails shop, int taxBp) => new()
    {
        Version = version,
        Lines = [.. lines.Select(line => ChargeLineInput.Of(line, shop)), .. Enumerable.Repeat(new ChargeLineInput { Kind = ChargeKind.Extra, TaxBp = taxBp }, Spare)],
    };
}

/// <summary>One line; without amount and metres it is left out.</summary>
public sealed record ChargeLineInput
{
    public ChargeKind Kind { get; init; }

    [StringLength(60, ErrorMessage = "Keep it within 60 characters.")]
    public string? Words { get; init; }

    [Range(0.01, 1000, ErrorMessage = "Enter metres between 0.01 and 1,000.")]
    public decimal? Metres { get; init; }

    public decimal? MetrePrice { get; init; }

    public decimal? Amount { get; init; }

    [Range(0, Tax.Whole)]
    public int TaxBp { get; init; }

    public static ChargeLineInput Of(ChargeLine line, ShopDetails shop) => new()
    {
        Kind = line.Kind,
        Words = line.Words,
        Metres = line.Centimetres / 100m,
        MetrePrice = MoneyFields.Amount(line.MetreMinor, shop),
        Amount = MoneyFields.Amount(line.AmountMinor, shop),
        TaxBp = line.TaxBp,
    };
}
