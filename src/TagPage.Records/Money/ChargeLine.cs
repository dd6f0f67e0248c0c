using TagPage.Core.Money;

namespace TagPage.Records.Money;

/// <summary>One line of a job's price.</summary>
public sealed record ChargeLine
{
    public ChargeKind Kind { get; init; }

    /// <summary>What kind alone does not say; empty for most.</summary>
    public string Words { get; init; } = "";

    /// <summary>Of string by the metre, with the price of a metre; both null for everything else.</summary>
    public int? Centimetres { get; init; }
    public long? MetreMinor { get; init; }

    public long AmountMinor { get; init; }

    /// <summary>The rate of the tax within the amount, as it was when the line was written.</summary>
    public int TaxBp { get; init; }

    internal string KindName => Kind.ToString();
}
