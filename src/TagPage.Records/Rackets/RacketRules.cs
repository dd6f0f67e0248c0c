using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Storage;

namespace TagPage.Records.Rackets;

/// <summary>Sizes that are possible but look like a typo or the wrong unit, and what cannot be undone.</summary>
public static class RacketRules
{
    /// <summary>Head sizes outside these, in cm², are asked about. Common practice, no source; small ones are children's and squash frames.</summary>
    private const decimal UsualMinSquareCm = 250, UsualMaxSquareCm = 900;

    /// <param name="input">As typed.</param>
    /// <param name="isTagged">Whether the racket on file has a live tag.</param>
    public static IReadOnlyList<Oddity> Oddities(RacketEntry input, bool isTagged = false)
    {
        Oddity?[] oddities =
        [
            input.LengthCm is { } length && length * 10 > SportFacts.Of(input.Sport).Limits.MaxLengthMm ? new FrameTooLong(length, input.Sport) : null,
            Head(input),
            isTagged && input.State == RacketState.Sold ? new SoldWithTag() : null,
        ];
        return [.. oddities.OfType<Oddity>()];
    }

    private static HeadUnusual? Head(RacketEntry input)
    {
        if (input.HeadSize is not { } size)
            return null;
        var squareCm = input.HeadSizeUnit == "cm2" ? size : HeadSize.ToSquareCm(size);
        return squareCm is >= UsualMinSquareCm and <= UsualMaxSquareCm ? null : new HeadUnusual(size, input.HeadSizeUnit);
    }
}
