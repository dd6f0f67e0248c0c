using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>How the shop prints labels. Lengths in mm.</summary>
public sealed record LabelSettings
{
    public decimal TapeMm { get; init; } = 12;
    public decimal MarginMm { get; init; } = 1;
    public int Dpi { get; init; } = 180;
    public decimal LongestMm { get; init; } = 80;
    public decimal LargestPoints { get; init; } = 10;
    public decimal SmallestModuleMm { get; init; } = 0.25m;
    public decimal FineModuleMm { get; init; } = 0.33m;
    public decimal LargestModuleMm { get; init; } = 0.6m;
    public decimal FoldGapMm { get; init; } = 30;
    public string TapeColour { get; init; } = "white";
    public string InkColour { get; init; } = "black";
    public string ReturnWords { get; init; } = "Lost racket: scan to return it";
    public string SheetPaper { get; init; } = "A4";
    public int SheetColumns { get; init; } = 3;
    public int SheetRows { get; init; } = 8;
    public decimal SheetWidthMm { get; init; } = 60;
    public decimal SheetHeightMm { get; init; } = 30;
    public decimal SheetLeftMm { get; init; } = 10;
    public decimal SheetTopMm { get; init; } = 20;
    public decimal SheetPitchXMm { get; init; } = 65;
    public decimal SheetPitchYMm { get; init; } = 33;
    public int Version { get; init; }

    /// <summary>What labels are laid out for, in the colours of one label.</summary>
    public LabelStock Stock(string? tapeColour = null, string? inkColour = null, bool fold = false) => new(
        new Tape((double)TapeMm, ColourOf(tapeColour), InkColours.Patch(string.IsNullOrEmpty(inkColour) ? InkColour : inkColour)),
        new Printer((double)MarginMm, Dpi),
        new ModuleLimits((double)SmallestModuleMm, (double)FineModuleMm, (double)LargestModuleMm))
    {
        MaxLengthMm = (double)(fold ? 2 * LongestMm + FoldGapMm : LongestMm),
        LargestPoints = (double)LargestPoints,
        FoldGapMm = fold ? (double)FoldGapMm : null,
    };

    /// <summary>The same on a sheet: its labels are as high and as long as they are.</summary>
    public LabelStock OnSheet(LabelStock stock) => stock with
    {
        Tape = stock.Tape with { WidthMm = (double)SheetHeightMm },
        MaxLengthMm = (double)SheetWidthMm,
        FoldGapMm = null,
    };

    public SheetPlan Sheet() => new(
        SheetPaper == Paper.Letter.Name ? Paper.Letter : Paper.A4, SheetColumns, SheetRows, (double)SheetWidthMm, (double)SheetHeightMm)
    {
        LeftMm = (double)SheetLeftMm,
        TopMm = (double)SheetTopMm,
        PitchXMm = (double)SheetPitchXMm,
        PitchYMm = (double)SheetPitchYMm,
    };

    // A colour that only its name is known of is worked out as the shop's usual one, else as white.
    private Core.Colour.Rgb ColourOf(string? name) =>
        TapeColours.Patch(string.IsNullOrEmpty(name) ? TapeColour : name) ?? TapeColours.Patch(TapeColour) ?? Core.Colour.Rgb.White;
}
