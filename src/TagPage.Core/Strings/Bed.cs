namespace TagPage.Core.Strings;

/// <summary>The strings in a racket: mains run upright, crosses across.</summary>
public sealed record Bed(BedString Mains, BedString Crosses)
{
    /// <summary>Whether mains and crosses differ in material or diameter.</summary>
    public bool IsHybrid => Mains != Crosses;

    /// <summary>A bed of one string throughout.</summary>
    public static Bed Of(BedString both) => new(both, both);
}
