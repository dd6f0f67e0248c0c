using TagPage.Core.Sports;
using TagPage.Records.Storage;

namespace TagPage.Records.Specs;

public sealed record MeasuredInFuture(DateOnly Day) : Oddity(nameof(SpecEntry.MeasuredOn));

public sealed record WeightUnusual(decimal Grams, Sport Sport) : Oddity(nameof(SpecEntry.Weight));

public sealed record BalanceUnusual(decimal Mm, Sport Sport) : Oddity(nameof(SpecEntry.Balance));

public sealed record SwingWeightUnusual(decimal SwingWeight, Sport Sport) : Oddity(nameof(SpecEntry.SwingWeight));

/// <summary>Below what its mass at its balance point alone would have: its recoil weight would be below zero.</summary>
/// <param name="SwingWeight">As it was entered.</param>
/// <param name="Least">What mass and balance demand.</param>
public sealed record SwingWeightTooSmall(decimal SwingWeight, decimal Least) : Oddity(nameof(SpecEntry.SwingWeight))
{
    public decimal Grams { get; init; }
    public decimal BalanceMm { get; init; }
}

public sealed record BalanceBeyondTip(decimal Mm, decimal LengthMm) : Oddity(nameof(SpecEntry.Balance));

/// <summary>Heavier than the rules of its sport allow.</summary>
public sealed record MeasuredTooHeavy(decimal Grams, Sport Sport) : Oddity(nameof(SpecEntry.Weight));

/// <summary>Longer than the rules of its sport allow.</summary>
public sealed record MeasuredTooLong(decimal LengthMm, Sport Sport) : Oddity(nameof(SpecEntry.Length));
