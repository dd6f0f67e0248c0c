using TagPage.Core.Sports;
using TagPage.Records.Storage;

namespace TagPage.Records.Rackets;

/// <summary>Longer than the rules of its sport allow.</summary>
public sealed record FrameTooLong(decimal LengthCm, Sport Sport) : Oddity(nameof(RacketEntry.LengthCm));

/// <param name="Size">As typed.</param>
/// <param name="Unit">in2 or cm2.</param>
public sealed record HeadUnusual(decimal Size, string? Unit) : Oddity(nameof(RacketEntry.HeadSize));

/// <summary>The tag of a racket that is sold stops working for good.</summary>
public sealed record SoldWithTag() : Oddity(nameof(RacketEntry.State));
