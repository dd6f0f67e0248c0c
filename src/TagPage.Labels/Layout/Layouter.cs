using TagPage.Core.Colour;
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
        var whole = content with { Panels = Panels(content, fit) };
        List<string> warnings = fit is { IsPrinted: false } ? [Refusal(fit, stock)] : [];
        if (Contrast.Ratio(stock.Tape.Ink, stock.Tape.Colour) < Contrast.Text)
            warnings.Add("Ink and tape are rather alike: small type is hard to read in poor light. Another ink or tape reads better.");
        var canvas = new Canvas(stock, square, content.Logo);
        var type = canvas.Fill(whole);
        if (canvas.HasLogo && (type is null ? whole.Panels.Count > 0 : type.Loss > 0))
        {
            canvas = new Canvas(stock, square, null);
            type = canvas.Fill(whole);
            warnings.Add("There is no room for the logo; it is left out.");
        }
        warnings.AddRange(type?.Warnings ?? Unprinted(whole));
        var (length, pieces) = canvas.Place(type, stock.Printer.Dots(ShortestMm));
        return Fold(new LaidLabel(stock, length, pieces, fit, warnings) { Words = [.. type?.Said ?? []] });
    }

    // No size of type fits: everything is named.
    private static IEnumerable<string> Unprinted(LabelContent content) => content.Panels
        .SelectMany(panel => panel.Lines.Select(line => (line.Name, line.Text)).Concat(panel.Figure is { } figure ? [(figure.Name, figure.Text)] : []))
        .Where(field => field.Text.Length > 0)
        .Select(field => $"There is no room for {field.Name} (“{field.Text}”); it is left out.");

    private static (TagQr? Square, SquareFit? Fit) Square(LabelTag? tag, LabelStock stock)
    {
        if (tag is null || !TagQr.Takes(tag.Address))
            return (null, null);
        var qr = TagQr.Of(tag.Address);
        var fit = SquareFit.On(qr.Modules, stock.Tape, stock.Printer, stock.Limits);
        return (fit.IsPrinted ? qr : null, fit);
    }

    private static IReadOnlyList<LabelPanel> Panels(LabelContent content, SquareFit? fit)
    {
        var hasSquare = fit is { IsPrinted: true };
        if (content.Tag is not { } tag || (hasSquare && !tag.InWords))
            return content.Panels;
        var address = Purposes.Address(tag, hasSquare);
        // With the square the address comes last; without it, it comes first, after words that lead to it.
        if (hasSquare)
            return content.Panels.ToArray() is [.. var others, { Figure: null } last] ? [.. others, last with { Lines = [.. last.Lines, .. address] }] : [.. content.Panels, new(null, address)];
        var leading = content.Panels.SelectMany(panel => panel.Lines).Where(line => line.WithoutSquare is not null)
            .Select(line => line with { Text = line.WithoutSquare!, Parts = LabelLine.Words(line.WithoutSquare!), Rank = -2 });
        return
        [
            new(null, [.. leading, .. address]),
            .. content.Panels.Select(panel => panel with { Lines = [.. panel.Lines.Where(line => line.WithoutSquare is null)] }),
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
