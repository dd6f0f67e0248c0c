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
    /// <summary>What labels are laid out for, on the tape of one label.</summary>
    public static LabelStock Stock(this LabelSettings s, LabelEntry? label = null) => new(
        TapeOf(s, label ?? new LabelEntry()),
        new Printer((double)s.MarginMm, s.Dpi),
        new ModuleLimits((double)s.SmallestModuleMm, (double)s.FineModuleMm, (double)s.LargestModuleMm))
    {
        MaxLengthMm = (double)(label is { Fold: true } ? s.LongestFoldMm : s.LongestMm),
        LargestPoints = (double)s.LargestPoints,
        FoldGapMm = label is { Fold: true } ? (double)s.FoldGapMm : null,
    };

    /// <summary>Why nothing can be printed in these colours, or null.</summary>
    public static string? InkFault(this LabelSettings s, string? tapeColour, string? inkColour) =>
        TapeOf(s, new LabelEntry { TapeColour = tapeColour, InkColour = inkColour }).IsReadable
            ? null
            : $"With {inkColour} ink on {Named(tapeColour, s.TapeColour)} tape nothing can be read. Choose another ink or tape.";

    private static string Named(string? name, string usual) => string.IsNullOrEmpty(name) ? usual : name;

    // Without an ink of its own a label's ink follows its tape.
    private static Tape TapeOf(LabelSettings s, LabelEntry label)
    {
        var colour = ColourOf(s, label.TapeColour);
        var ink = string.IsNullOrEmpty(label.InkColour) ? InkColours.Following(colour, s.InkColour) : InkColours.Patch(label.InkColour);
        return new Tape((double)(label.TapeMm ?? s.TapeMm), colour, ink);
    }

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

    // A colour that only its name is known of is worked out as the shop's usual one, else as white.
    private static Rgb ColourOf(LabelSettings s, string? name) =>
        TapeColours.Patch(string.IsNullOrEmpty(name) ? s.TapeColour : name) ?? TapeColours.Patch(s.TapeColour) ?? Rgb.White;
}
