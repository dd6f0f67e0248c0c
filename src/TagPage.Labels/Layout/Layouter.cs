using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
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

    // Narrower tape carries no square, so that its labels hold something else.
    private const double LeastComparedMm = 12;

    // A label asks what narrower tape holds: each is laid out once for a content, as long as that is in use.
    private static readonly ConditionalWeakTable<LabelContent, ConcurrentDictionary<LabelStock, LaidLabel>> Known = [];

    /// <summary>Lays out one label. Never throws for lack of room: what does not fit is named in the warnings.</summary>
    public static LaidLabel Lay(LabelContent content, LabelStock stock)
    {
        var qr = content.Tag is { } tag && TagQr.Takes(tag.Address) ? TagQr.Of(tag.Address) : null;
        return Fold(Half(content, qr, stock, new Typing()) with { Stock = stock });
    }

    // Tape of up to 24 mm never makes a longer label of what was done or measured than narrower tape does. A tag alone, a desk's number and any words grow with their tape.
    private static LaidLabel Half(LabelContent content, TagQr? qr, LabelStock stock, Typing typing) =>
        Known.GetOrCreateValue(content).GetOrAdd(stock, _ => NewHalf(content, qr, stock, typing));

    private static LaidLabel NewHalf(LabelContent content, TagQr? qr, LabelStock stock, Typing typing)
    {
        var below = Below(content, qr, stock, typing);
        var floored = Floored(stock, below);
        var label = SmallerSquare(ComposeFloored(content, qr, floored, typing), dots => ComposeFloored(content, qr, dots, typing));
        label = label with { Stock = stock };
        if (!IsComparable(content, qr, stock, below) || below is not { } narrower || (label.Loss == 0 && label.LengthMm <= narrower.LengthMm + Growth(label, narrower)))
            return label;
        var limits = Limited(label with { Stock = floored }, narrower).ToLookup(limits => limits.Limits.LargestOn(stock.Tape.WidthMm) >= stock.Limits.FineMm);
        var best = (Best(limits[true]) ?? Best(limits[false])) is { } found ? found with { Stock = stock } : null;
        return best is null || (label.Loss == 0 && best.LeastSize < LargerType(stock) * narrower.LeastSize && MayBeLonger(content, stock)) ? label : best;

        // The first whose type is larger, else that with the largest type.
        LaidLabel? Best(IEnumerable<LabelStock> tried)
        {
            LaidLabel? best = null;
            foreach (var limited in tried.Select(limits => Compose(content, qr, limits, typing)).Where(limited => limited.Loss == 0))
            {
                if (best is null || limited.LeastSize > best.LeastSize)
                    best = limited;
                if (best.LeastSize >= LargerType(stock) * narrower.LeastSize)
                    break;
            }
            return best;
        }
    }

    // Where type does not grow within the length, over 24 mm and in a list, whose rows stand one under the other already.
    private static bool MayBeLonger(LabelContent content, LabelStock stock) => stock.Tape.WidthMm > ModuleLimits.WideMm || !HasFigure(content);

    // Tape over 24 mm is read from farther away: type that cannot grow there within the length is no gain.
    private static double LargerType(LabelStock stock) => stock.Tape.WidthMm > ModuleLimits.WideMm ? 1.2 : 1.05;

    // There the square grows with the tape, and may take that much more length.
    private static double Growth(LaidLabel label, LaidLabel narrower) =>
        label.Stock.Tape.WidthMm > ModuleLimits.WideMm ? Math.Max(0, label.SquareRoomMm - narrower.SquareRoomMm) : 0;

    // First with captions in front of their lines, then over them. A smaller square leaves more of the length to type, and is never smaller than on the narrower tape.
    private static IEnumerable<LabelStock> Limited(LaidLabel label, LaidLabel narrower)
    {
        var stock = label.Stock;
        var (most, least) = (label.Square?.DotsPerModule ?? 0, narrower.Square?.DotsPerModule ?? 0);
        return from breaks in (bool[])[false, true]
               from dots in Enumerable.Range(least, Math.Max(1, most - least + 1)).Reverse()
               select stock.NoLongerThan(narrower, most == 0 ? 0 : Growth(label, narrower) * (dots - least) / Math.Max(1, most - least)) with
               {
                   BreaksCaptions = breaks,
                   Limits = dots == 0 ? stock.Limits : stock.Limits.NoLargerThan(dots * stock.Printer.DotMm, stock.Tape.WidthMm),
               };
    }

    /// <summary>The same on the next narrower tape; null where nothing is learned from it.</summary>
    private static LaidLabel? Below(LabelContent content, TagQr? qr, LabelStock stock, Typing typing)
    {
        var width = Tape.Widths.LastOrDefault(width => width < stock.Tape.WidthMm);
        return width == 0 || content.Logo is not null || content.Grows || (width < LeastComparedMm && !HasFigure(content)) || !HoldsMuch(content) && !HasFigure(content)
            ? null
            : Half(content, qr, stock with { Tape = stock.Tape with { WidthMm = width } }, typing);
    }

    // Figures are never smaller on wider tape. Where neither carries a square, wider tape may be as long as narrower, which holds less.
    private static LabelStock Floored(LabelStock stock, LaidLabel? below) => below is null ? stock : stock with
    {
        LeastFigure = below.FigureSize,
        FreeDots = stock.Tape.WidthMm < LeastComparedMm ? below.LengthDots : 0,
    };

    // Unless something more would be left out for it.
    private static LaidLabel ComposeFloored(LabelContent content, TagQr? qr, LabelStock stock, Typing typing)
    {
        var label = Compose(content, qr, stock, typing);
        return label.Loss > Filling.LeastLoss && stock.LeastFigure > 0 && Compose(content, qr, stock with { LeastFigure = 0 }, typing) is var other && other.Loss < label.Loss ? other : label;
    }

    // A large square is given up before words are, as long as it scans as well.
    private static LaidLabel SmallerSquare(LaidLabel label, Func<LabelStock, LaidLabel> compose)
    {
        var (stock, best) = (label.Stock, label);
        for (var dots = (label.Square?.DotsPerModule ?? 0) - 1; best.Loss > Filling.LeastLoss && dots * stock.Printer.DotMm >= stock.Limits.FineMm; dots--)
        {
            if (compose(stock with { Limits = stock.Limits.NoLargerThan(dots * stock.Printer.DotMm, stock.Tape.WidthMm) }) is var smaller && smaller.Loss < best.Loss)
                best = smaller;
        }
        return best;
    }

    private static bool IsComparable(LabelContent content, TagQr? qr, LabelStock stock, LaidLabel? below) =>
        below is { Loss: 0 } && below.Stock.Tape.WidthMm >= LeastComparedMm && HoldsMuch(content) && Fit(qr, stock)?.IsPrinted == Fit(qr, below.Stock)?.IsPrinted;

    private static bool HasFigure(LabelContent content) => content.Panels.Any(panel => panel.Figure is { IsTall: false });

    private static bool HoldsMuch(LabelContent content) =>
        !HasTall(content) && content.Panels.Sum(panel => panel.Lines.Count + (panel.Figure is null ? 0 : 1)) > 1;

    // Beside a number as high as the tape the square is that of 18 mm.
    private const double MostBesideTallMm = 0.43;

    private static bool HasTall(LabelContent content) => content.Panels.Any(panel => panel.Figure is { IsTall: true });

    private static LaidLabel Compose(LabelContent content, TagQr? qr, LabelStock stock, Typing typing)
    {
        var fit = Fit(qr, HasTall(content) ? stock with { Limits = stock.Limits.NoLargerThan(MostBesideTallMm, stock.Tape.WidthMm) } : stock);
        var square = fit is { IsPrinted: true } ? qr : null;
        var (kept, left) = Essentials(content, stock);
        var whole = kept with { Panels = Panels(kept, fit) };
        List<string> warnings = [.. fit is { IsPrinted: false } ? [Refusal(fit, stock)] : Array.Empty<string>(), .. left];
        if (Contrast.Ratio(stock.Tape.Ink, stock.Tape.Colour) < Contrast.Text)
            warnings.Add("Ink and tape are rather similar: small type is hard to read in poor light. Another ink or tape reads better.");
        var canvas = new Canvas(stock, square, fit?.DotsPerModule ?? 0, content.Logo);
        var type = canvas.Fill(whole, typing);
        if (canvas.HasLogo && (type is null ? whole.Panels.Count > 0 : type.Loss > 0))
        {
            canvas = new Canvas(stock, square, fit?.DotsPerModule ?? 0, null);
            type = canvas.Fill(whole, typing);
            warnings.Add("There is no room for the logo; it is left out.");
        }
        warnings.AddRange(type?.Warnings ?? Unprinted(whole));
        var (length, pieces) = canvas.Place(type, stock.Printer.Dots(ShortestMm));
        return new LaidLabel(stock, length, pieces, fit, warnings) { Words = [.. type?.Said ?? []], FigureSize = type?.FigureSize ?? 0, Loss = type?.Loss ?? (whole.Panels.Count > 0 ? double.PositiveInfinity : 0) };
    }

    // Tape too narrow for a square is too narrow for all that stands beside one.
    private static (LabelContent Kept, IEnumerable<string> Left) Essentials(LabelContent content, LabelStock stock)
    {
        List<LabelLine> extras = stock.Tape.WidthMm > SquareFit.TooNarrowMm ? [] : [.. content.Panels.SelectMany(panel => panel.Lines).Where(line => line.IsExtra && line.Text.Trim().Length > 0)];
        if (extras.Count == 0)
            return (content, []);
        var names = extras.ConvertAll(line => $"{line.Name} (“{line.Text}”)");
        var sentence = $"Tape of {stock.Tape.WidthMm:0.#} mm holds only the essentials; left out: {string.Join(", ", names)}.";
        return (content with { Panels = [.. content.Panels.Select(panel => panel with { Lines = [.. panel.Lines.Except(extras)] })] }, [sentence]);
    }

    // No size of type fits: everything is named.
    private static IEnumerable<string> Unprinted(LabelContent content) => content.Panels
        .SelectMany(panel => panel.Lines.Select(line => (line.Name, line.Text)).Concat(panel.Figure is { } figure ? [(figure.Name, figure.Text)] : []))
        .Where(field => field.Text.Length > 0)
        .Select(field => $"There is no room for {field.Name} (“{field.Text}”); it is left out.");

    private static SquareFit? Fit(TagQr? qr, LabelStock stock) => qr is null ? null : SquareFit.On(qr.Modules, stock.Tape, stock.Printer, stock.Limits);

    private static IReadOnlyList<LabelPanel> Panels(LabelContent content, SquareFit? fit)
    {
        var hasSquare = fit is { IsPrinted: true };
        if (content.Tag is not { } tag || (hasSquare && !tag.InWords))
            return content.Panels;
        var address = Purposes.Address(tag, hasSquare);
        // Words that a square would follow lead to the address instead.
        if (!hasSquare && content.Panels is [{ Figure: null, Lines: [{ WithoutSquare: { } words } leading] }])
            return [new(null, [leading with { Text = words, Parts = LabelLine.Words(words) }, .. address.Select(line => line with { Rank = leading.Rank + 1, Ends = false })])];
        return content.Panels.ToArray() is [.. var others, var last] && (!hasSquare || last.Figure is null)
            ? [.. others, last with { Lines = [.. last.Lines, .. address] }]
            : [.. content.Panels, new(null, address)];
    }

    private static string Refusal(SquareFit fit, LabelStock stock) => fit.Reason switch
    {
        SquareReason.LightOnDark => "The ink is lighter than the tape, and many phones read only dark on light: the code is printed instead of the square.",
        SquareReason.LittleContrast => "Ink and tape are too similar for a camera: the code is printed instead of the square.",
        SquareReason.NarrowTape => $"Tape of {stock.Tape.WidthMm:0.#} mm is too narrow for a square: the code is printed instead.",
        _ => $"The square’s modules would be {fit.ModuleMm:0.000} mm, under the limit of {stock.Limits.SmallestMm:0.00} mm: the code is printed instead.",
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
