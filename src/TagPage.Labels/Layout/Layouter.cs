using TagPage.Labels.Content;
using TagPage.Labels.Geometry;

namespace TagPage.Labels.Layout;

/// <summary>Lays out what a label says: the square first, the lines beside it, the shop's logo at the end.</summary>
public static class Layouter
{
    /// <summary>Type is never smaller than this, in points.</summary>
    public const double LeastPoints = 5;

    private const double ShortestMm = 10;

    /// <summary>Lays out one label. Never throws for lack of room: what does not fit is named in the warnings.</summary>
    public static LaidLabel Lay(LabelContent content, LabelStock stock)
    {
        var (square, fit) = Square(content.Tag, stock);
        var lines = Lines(content, fit);
        var canvas = new Canvas(stock, square, content.Logo);
        var fitter = canvas.Fitter();
        var set = fitter.Fit(lines);
        if (canvas.HasLogo && fitter.IsShort)
        {
            canvas = new Canvas(stock, square, null);
            fitter = canvas.Fitter("There is no room for the logo; it is left out.");
            set = fitter.Fit(lines);
        }
        var warnings = fit is { IsPrinted: false } ? [Refusal(fit, stock), .. fitter.Warnings] : fitter.Warnings;
        var (length, pieces) = canvas.Place(set, stock.Printer.Dots(ShortestMm));
        return Fold(new LaidLabel(stock, length, pieces, fit, warnings));
    }

    private static (TagQr? Square, SquareFit? Fit) Square(LabelTag? tag, LabelStock stock)
    {
        if (tag is null || !TagQr.Takes(tag.Address))
            return (null, null);
        var qr = TagQr.Of(tag.Address);
        var fit = SquareFit.On(qr.Modules, stock.Tape, stock.Printer, stock.Limits);
        return (fit.IsPrinted ? qr : null, fit);
    }

    private static List<LabelLine> Lines(LabelContent content, SquareFit? fit)
    {
        if (content.Tag is not { } tag)
            return [.. content.Lines];
        var typed = new LabelLine("the address and the code", tag.Typed) { Shorter = [tag.Code.Display] };
        if (fit is { IsPrinted: true })
            return [.. content.Lines, typed, new LabelLine("the line that says what the square is for", tag.Purpose) { MayBeCut = true }];
        // Words that lead to the address stand before it, everything else after it.
        return
        [
            .. content.Lines.Where(line => line.WithoutSquare is not null).Select(line => line with { Text = line.WithoutSquare! }),
            typed,
            .. content.Lines.Where(line => line.WithoutSquare is null),
        ];
    }

    private static string Refusal(SquareFit fit, LabelStock stock) => fit.Reason switch
    {
        SquareReason.LightOnDark => "The ink is lighter than the tape, and many phones read only dark on light: the code is printed instead of the square.",
        SquareReason.LittleContrast => "Ink and tape are too much alike for a camera: the code is printed instead of the square.",
        SquareReason.NarrowTape => $"Tape of {stock.Tape.WidthMm:0.#} mm is too narrow for a square: the code is printed instead.",
        _ => $"The square's modules would be {fit.ModuleMm:0.000} mm, under the limit of {stock.Limits.SmallestMm:0.00} mm: the code is printed instead.",
    };

    // Twice, one after the other: folded round the shaft, both sides read upright. The mark shows the fold.
    private static LaidLabel Fold(LaidLabel half)
    {
        if (half.Stock.FoldGapMm is not { } gapMm)
            return half;
        var (gap, height) = (half.Stock.Printer.Dots(gapMm), half.HeightDots);
        var (middle, mark) = (half.LengthDots + gap / 2, Math.Max(2, height / 12));
        var first = half.Stock.Printer.FirstDot(half.Stock.Tape.WidthMm);
        return half with
        {
            LengthDots = 2 * half.LengthDots + gap,
            Pieces =
            [
                .. half.Pieces,
                .. half.Pieces.Select(piece => piece.MovedBy(half.LengthDots + gap)),
                new BoxPiece(middle, first, 1, mark),
                new BoxPiece(middle, height - first - mark, 1, mark),
            ],
        };
    }
}
