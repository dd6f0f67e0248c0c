using TagPage.Core.Sports;

namespace TagPage.Core.Customising;

/// <summary>How a racket leaves the rules of its sport.</summary>
public enum RuleBreak { TooLong, TooHeavy, MassOnStrings }

/// <summary>Whether a customised racket stays within the rules of its sport. It warns; it never forbids.</summary>
public static class FrameRules
{
    /// <param name="sport">The racket's.</param>
    /// <param name="lengthMm">Null where it was not measured.</param>
    /// <param name="massG">Null where it was not measured.</param>
    /// <param name="massOnStrings">Whether anything was added to the strings.</param>
    public static IReadOnlyList<RuleBreak> Broken(Sport sport, double? lengthMm, double? massG, bool massOnStrings)
    {
        var limits = SportFacts.Of(sport).Limits;
        RuleBreak?[] broken =
        [
            lengthMm > limits.MaxLengthMm ? RuleBreak.TooLong : null,
            massG > limits.MaxMassG ? RuleBreak.TooHeavy : null,
            massOnStrings && sport == Sport.Tennis ? RuleBreak.MassOnStrings : null,
        ];
        return [.. broken.OfType<RuleBreak>()];
    }
}
