using TagPage.Core.Sports;
using TagPage.Records.Storage;

namespace TagPage.Records.Specs;

public sealed record MeasuredInFuture(DateOnly Day) : Oddity(nameof(SpecEntry.MeasuredOn));

public sealed record WeightUnusual(decimal Grams, Sport Sport) : Oddity(nameof(SpecEntry.Weight));

public sealed record BalanceUnusual(decimal Mm, Sport Sport) : Oddity(nameof(SpecEntry.Balance));

public sealed record SwingWeightUnusual(decimal SwingWeight, Sport Sport) : Oddity(nameof(SpecEntry.SwingWeight));

/// <summary>Heavier than the rules of its sport allow.</summary>
public sealed record MeasuredTooHeavy(decimal Grams, Sport Sport) : Oddity(nameof(SpecEntry.Weight));

/// <summary>Longer than the rules of its sport allow.</summary>
public sealed record MeasuredTooLong(decimal LengthMm, Sport Sport) : Oddity(nameof(SpecEntry.Length));
