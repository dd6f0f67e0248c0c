using TagPage.Core.Colour;
using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Records.Labels;
using TagPage.Web.Words;

namespace TagPage.Web.Labels;

/// <summary>The shop's label settings as the layout takes them.</summary>
public static class LabelStocks
{
    /// <summary>What labels are laid out for, in the colours of one label.</summary>
    public static LabelStock Stock(this LabelSettings s, string? tapeColour = null, string? inkColour = null, bool fold = false) => new(
        new Tape((double)s.TapeMm, ColourOf(s, tapeColour), InkColours.Patch(string.IsNullOrEmpty(inkColour) ? s.InkColour : inkColour)),
        new Printer((double)s.MarginMm, s.Dpi),
        new ModuleLimits((double)s.SmallestModuleMm, (double)s.FineModuleMm, (double)s.LargestModuleMm))
    {
        MaxLengthMm = (double)(fold ? 2 * s.LongestMm + s.FoldGapMm : s.LongestMm),
        LargestPoints = (double)s.LargestPoints,
        FoldGapMm = fold ? (double)s.FoldGapMm : null,
    };

    /// <summary>The same on a sheet: its labels are as high and as long as they are.</summary>
    public static LabelStock OnSheet(this LabelSettings s, LabelStock stock) => stock with
    {
        Tape = stock.Tape with { WidthMm = (double)s.SheetHeightMm },
        MaxLengthMm = (double)s.SheetWidthMm,
        FoldGapMm = null,
    };

    public static SheetPlan Sheet(this LabelSettings s) => new(
        s.SheetPaper == Paper.Letter.Name ? Paper.Letter : Paper.A4, s.SheetColumns, s.SheetRows, (double)s.SheetWidthMm, (double)s.SheetHeightMm)
    {
        LeftMm = (double)s.SheetLeftMm,
        TopMm = (double)s.SheetTopMm,
        PitchXMm = (double)s.SheetPitchXMm,
        PitchYMm = (double)s.SheetPitchYMm,
    };

    // A colour known only by its name is taken as the shop's usual one, otherwise as white.
    private static Rgb ColourOf(LabelSettings s, string? name) =>
        TapeColours.Patch(string.IsNullOrEmpty(name) ? s.TapeColour : name) ?? TapeColours.Patch(s.TapeColour) ?? Rgb.White;
}
