using System.ComponentModel.DataAnnotations;
using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Strings;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Money;

/// <summary>The price list as the form posts it.</summary>
public sealed record PricesInput
{
    public const int Most = 2000;

    private const string BadRate = "Enter a rate between 0 and 100 %, with at most two decimals.";

    public int Version { get; init; }

    public decimal? Labour { get; init; }
    public decimal? Tennis { get; init; }
    public decimal? Badminton { get; init; }
    public decimal? Squash { get; init; }

    [Range(0.0, 100.0, ErrorMessage = BadRate), RegularExpression(@"\d+([.,]\d{1,2})?", ErrorMessage = BadRate)]
    public decimal? TaxPercent { get; init; }

    [StringLength(40, ErrorMessage = "Keep the number within 40 characters.")]
    public string? TaxNumber { get; init; }

    [StringLength(50, ErrorMessage = "An account number has at most 34 letters and digits.")]
    public string? Iban { get; init; }

    [StringLength(70, ErrorMessage = "Keep the name within 70 characters.")]
    public string? AccountName { get; init; }

    [MaxLength(Most)]
    public List<StringPriceInput> Strings { get; init; } = [];

    [MaxLength(50)]
    public List<ExtraPriceInput> Extras { get; init; } = [];

    public static PricesInput Of(PriceList list, IEnumerable<StringStore.Row> catalogue, ShopDetails shop)
    {
        decimal? Amount(long? minor) => MoneyFields.Amount(minor, shop);
        return new PricesInput
        {
            Version = list.Version,
            Labour = Amount(list.LabourMinor),
            Tennis = Amount(list.TennisMinor),
            Badminton = Amount(list.BadmintonMinor),
            Squash = Amount(list.SquashMinor),
            TaxPercent = list.TaxBp == 0 ? null : list.TaxBp / 100m,
            TaxNumber = list.TaxNumber,
            Iban = list.Iban is { } iban ? Core.Money.Iban.Shown(iban) : null,
            AccountName = list.AccountName,
            Strings = [.. catalogue.Where(s => s.Offered || list.Strings.ContainsKey(s.Id)).Take(Most).Select(s => new StringPriceInput
            {
                Id = s.Id,
                Set = Amount(list.Strings.GetValueOrDefault(s.Id)?.SetMinor),
                Metre = Amount(list.Strings.GetValueOrDefault(s.Id)?.MetreMinor),
            })],
            Extras =
            [
                .. new[] { ChargeKind.Grip, ChargeKind.Grommets, ChargeKind.Rush }.Select(kind => ExtraPriceInput.Of(kind, list.Extras.FirstOrDefault(e => e.Kind == kind), shop)),
                .. list.Extras.Where(e => e.Kind == ChargeKind.Extra).Select(e => ExtraPriceInput.Of(e.Kind, e, shop)),
                new ExtraPriceInput { Kind = ChargeKind.Extra },
                new ExtraPriceInput { Kind = ChargeKind.Extra },
            ],
        };
    }
}

public sealed record StringPriceInput
{
    public long Id { get; init; }
    public decimal? Set { get; init; }
    public decimal? Metre { get; init; }
}

public sealed record ExtraPriceInput
{
    public long Id { get; init; }
    public ChargeKind Kind { get; init; }

    [StringLength(60, ErrorMessage = "Keep it within 60 characters.")]
    public string? Name { get; init; }

    public decimal? Amount { get; init; }

    public static ExtraPriceInput Of(ChargeKind kind, ExtraPrice? extra, ShopDetails shop) => new()
    {
        Id = extra?.Id ?? 0,
        Kind = kind,
        Name = extra?.Name,
        Amount = MoneyFields.Amount(extra?.AmountMinor, shop),
    };
}
