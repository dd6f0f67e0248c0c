using TagPage.Labels.Geometry;

namespace TagPage.Labels.Layout;

/// <summary>What labels are made of and how large they may be.</summary>
/// <param name="Tape">What is printed on.</param>
/// <param name="Printer">What prints.</param>
/// <param name="Limits">Sizes of a module.</param>
public sealed record LabelStock(Tape Tape, Printer Printer, ModuleLimits Limits)
{
    /// <summary>A label is no longer than this, in mm (common practice: what a racket's throat holds).</summary>
    public double MaxLengthMm { get; init; } = 80;

    /// <summary>Plain lines grow no larger than this, in points.</summary>
    public double LargestPoints { get; init; } = 10;

    /// <summary>The gap between the two halves of a label that is folded round a thin shaft, in mm; null for a plain label.</summary>
    public double? FoldGapMm { get; init; }

    /// <summary>Where a label may be no longer than on narrower tape, the smallest type there, in dots; else 0.</summary>
    internal int LeastType { get; init; }

    /// <summary>Figures are no smaller than this, in dots: as large as on narrower tape; 0 for any size.</summary>
    internal int LeastFigure { get; init; }

    /// <summary>Length that costs nothing, in dots: that of narrower tape which holds less.</summary>
    internal int FreeDots { get; init; }

    /// <summary>Whether a caption may stand in a row of its own, over its line, to save length.</summary>
    internal bool BreaksCaptions { get; init; }

    /// <summary>The same for labels no longer than another is before it is folded.</summary>
    internal LabelStock NoLongerThan(LaidLabel half, double andMm) => this with
    {
        MaxLengthMm = Math.Min(MaxLengthMm, (FoldGapMm ?? 0) + (FoldGapMm is null ? 1 : 2) * (half.LengthMm + andMm) + 0.1 * Printer.DotMm),
        LeastType = half.LeastSize,
    };

    /// <summary>12 mm, black on white, 180 dots an inch.</summary>
    public static LabelStock Usual { get; } = new(Tape.Usual, Printer.Usual, ModuleLimits.Usual);
}
