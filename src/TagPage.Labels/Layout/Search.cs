using TagPage.Labels.Content;
using TagPage.Labels.Text;

namespace TagPage.Labels.Layout;

/// <summary>
/// Tries rows and sizes and takes the best: first what gives up least, then type that can be read, then the shortest
/// label, with a little length spent on larger figures. Proportions are set by eye.
/// </summary>
internal sealed class Search(LabelContent content, LabelStock stock, Typing typing, int height, int room)
{
    private const int MostRows = 8;
    private const int FewestOfList = 4;
    // Wider tape, which carries the square as well, shall have figures as large.
    private const double MostNarrowRatio = 1.7;

    // Where nothing else gives a second row on the narrowest tape.
    private const double LeastRatio = 1.2;

    private const double LeastRatioPrice = 10;

    private const double LeastAirMm = 0.15;

    /// <summary>Of plain type that are tried in lists.</summary>
    private const int Sizes = 6;

    /// <summary>Against the type of narrower tape, where the label may be no longer than there.</summary>
    private static readonly double[] LimitedSizes = [1, 1.05, 1.2, 1.3];

    private static readonly double[] Ratios = [2.5, 2.1, 1.7, 1.3];

    private static readonly double[] NarrowRatios = [.. Ratios.Where(ratio => ratio <= MostNarrowRatio)], LeastRatios = [.. NarrowRatios, LeastRatio];

    private static readonly double[] RowPrices = [0.5, 2, 8];

    private static readonly ShapedText Digits = Shaper.Shape("0/lb", isBold: true);

    private static readonly ShapedText X = Shaper.Shape("x"), HighAndLow = Shaper.Shape("lp");

    private readonly double _dot = stock.Printer.DotMm;
    private readonly int _least = (int)Math.Ceiling(stock.Printer.PointsToDots(Layouter.LeastPoints) - 1e-9);
    // Height against that of tape of 12 mm, whose type is what the settings speak of.
    private readonly double _tall = height * stock.Printer.DotMm / 10;

    private int _most;

    private bool IsNarrow => _tall < 0.95;

    private bool IsWide => _tall > 1.3;

    private readonly int _air = Math.Max(1, (int)Math.Round(LeastAirMm / stock.Printer.DotMm));

    private int _readable;

    private bool _shrinks;

    // To what narrower tape holds; nothing may be given up then.
    private bool IsLimited => stock.LeastType > 0;

    /// <summary>Null where there is nothing to print or no room for any of it.</summary>
    public Filling? Best()
    {
        _most = (int)(stock.Printer.PointsToDots(stock.LargestPoints) * (content.Grows ? 2.5 : 1) * Math.Max(1, _tall));
        _readable = LeastReadable();
        var panels = Printable.Of(content.Panels, typing);
        if (panels.Count == 0)
            return null;
        (Filling? Filling, double Cost) best = (null, double.PositiveInfinity);
        if (IsLimited)
            return Best(panels, EndLine.Last, 0, best).Filling;
        foreach (var end in Printable.HasEnd(panels) ? Enum.GetValues<EndLine>() : [EndLine.Last])
        {
            if (end > EndLine.Last && best.Filling is { LosesMuch: false })
                break;
            best = Demoting(panels, end, best);
        }
        // Where the largest type leaves something out, smaller type or fewer words may not.
        if (best.Filling is { Loss: > Filling.LeastLoss } && !MayShrink(panels))
        {
            _shrinks = true;
            best = Best(panels, EndLine.Last, 0, best);
        }
        return best.Filling;
    }

    private (Filling? Filling, double Cost) Demoting(IReadOnlyList<LabelPanel> panels, EndLine end, (Filling? Filling, double Cost) best)
    {
        for (var demoted = 0; demoted <= panels.Count(panel => panel.Figure is not null) && best.Filling is not { Loss: 0 }; demoted++)
            best = Best(Printable.Demoted(panels, demoted), end, 4000 * demoted, best);
        return best;
    }

    private (Filling? Filling, double Cost) Best(IReadOnlyList<LabelPanel> panels, EndLine end, double price, (Filling? Filling, double Cost) best)
    {
        var breaks = panels.Any(panel => panel.Lines.Any(line => line.Parts.Count > 2)) ? RowPrices : [1];
        var tallPlans = TallPlan.All(panels, typing, height, stock.Tape.WidthMm, _dot).ToList();
        var areaOf = LeastArea(panels);
        var mostFigure = tallPlans[0].Size > 0 ? TallPlan.MostBeside(stock.Tape.WidthMm, _dot) : int.MaxValue;
        var plans = Plans(panels).Where(plan => Filling.FigureSizeOf(plan, panels) is var size && (size == 0 || (size >= stock.LeastFigure && size <= mostFigure))).Select(plan => (Plan: plan, Price: Price(plan), Area: areaOf(plan))).OrderBy(priced => priced.Price).ToList();
        foreach (var (tall, (plan, planPrice, area), rowPrice) in from tall in tallPlans from priced in plans from rowPrice in breaks select (tall, priced, rowPrice))
        {
            var least = price + planPrice + tall.Price;
            if (least + (IsLimited ? area : Math.Min(area, Filling.LeastLoss)) < best.Cost
                && (!IsLimited || area <= Area(room))
                && Filled(plan, panels, end, rowPrice, IsLimited ? 0 : best.Cost - least, tall) is { } filling
                && least + filling.Loss + (8 * filling.EmptyRows + (!IsWide ? 0 : 12 * filling.BareFigures) + 3 * filling.Breaks) * Math.Max(1, _tall) + (content.Grows ? 0 : Area(filling.Width)) is var cost && cost < best.Cost)
                best = (filling, cost);
        }
        return best;
    }

    // Before something is cut or left out, what can say less does so.
    private Filling? Filled(RowPlan plan, IReadOnlyList<LabelPanel> panels, EndLine end, double rowPrice, double mostLoss, TallPlan tall)
    {
        var filling = Filling.Of(plan, panels, end, false, typing, room, rowPrice, mostLoss, tall);
        if (!_shrinks || filling is { Loss: <= Filling.LeastLoss })
            return filling;
        var shorter = Filling.Of(plan, panels, end, true, typing, room, rowPrice, mostLoss, tall);
        return shorter is not null && !(filling?.Loss <= shorter.Loss) ? shorter : filling;
    }

    // What a plan costs whatever is filled into it, against a mm of length.
    private double Price(RowPlan plan)
    {
        if (content.Grows)
            return 10_000 * Math.Abs(plan.Shape.Details - content.Panels.Sum(panel => panel.Lines.Count)) + 0.1 * (_most - plan.Plain);
        var small = plan.Plain < _readable ? 2500 + 1000 * _dot * (_readable - plan.Plain) : 0;
        var figures = plan.Shape.Figures == 0 ? 0 : 14 * Math.Min(1, _tall * _tall) * (Ratios[0] - plan.Shape.Ratio) + LargeFigure(plan) + (plan.Shape.Ratio > LeastRatio ? 0 : LeastRatioPrice);
        return small + figures + Strain(plan) + 5 * plan.Spared * _dot;
    }

    // An x of 1.3 mm from tape of 12 mm on, less on narrower, which would have to be longer for it. Wider tape is read from farther away: there more is wished for.
    private int LeastReadable()
    {
        var size = _least;
        while (size < _most && XHeight(size) < 1.3 * Math.Min(1, _tall))
            size++;
        return Math.Max(size, stock.LeastType);
    }

    private double XHeight(int size) => X.InkUp(size) * _dot;

    // From 18 mm on, figures are wished for that use the tape's height.
    private double LargeFigure(RowPlan plan) => !IsWide ? 0 : 5 * Math.Max(0, 4.5 * Math.Sqrt(_tall) - plan.Figure * _dot);

    // A list is all type: there it is worth more length, up to what can be read well. So it is where the length is that of narrower tape anyway.
    private double Strain(RowPlan plan)
    {
        var isList = plan.Shape.Figures == 0;
        var wished = 1.3 * (isList ? Math.Pow(Math.Min(_tall, 2.2), IsNarrow ? 0.6 : 0.3) * Math.Max(1, _tall / 2.2) : Math.Pow(_tall, 0.4));
        return 100 * (isList && content.Panels.Sum(panel => panel.Lines.Count) >= FewestOfList ? 2 : 1) * (IsLimited ? 2 : 1) * Math.Max(0, wished - XHeight(plan.Plain));
    }

    // A mm of wide tape is more tape.
    private double Area(int width) => Math.Max(0, width - stock.FreeDots) * _dot * Math.Sqrt(Math.Max(1, _tall));

    // Where nothing is given up, all type stands in the plan's rows. Many plans share a size: its widths are added up once.
    private Func<RowPlan, double> LeastArea(IReadOnlyList<LabelPanel> panels)
    {
        var figures = panels.Select(panel => panel.Figure).OfType<Figure>().Where(figure => !figure.IsTall).Select(figure => typing.Shape(figure.Value, true)).ToList();
        var lines = panels.SelectMany(panel => panel.Lines).Select(line => typing.Shape(line, line.Text)).ToList();
        var (ofFigures, ofLines) = (new Dictionary<int, int>(), new Dictionary<int, int>());
        return plan => content.Grows ? 0 : Area((WidthAt(ofFigures, figures, plan.Figure) + WidthAt(ofLines, lines, plan.Plain)) / plan.Rows);

        static int WidthAt(Dictionary<int, int> known, List<ShapedText> texts, int size) =>
            known.TryGetValue(size, out var width) ? width : known[size] = texts.Sum(text => text.WidthAt(size));
    }

    private IEnumerable<RowPlan> Plans(IReadOnlyList<LabelPanel> panels)
    {
        var (oneRow, rows, hasTall) = (InkOf(panels, IsNarrow), InkOf(panels, false), panels.Any(panel => panel.Figure is { IsTall: true }));
        var mayShrink = MayShrink(panels) || _shrinks;
        foreach (var shape in Shapes(panels))
        {
            var ink = shape.Figures > 1 ? rows : oneRow;
            var tight = shape is { Figures: 1, Details: > 0 } ? shape with { IsTight = true } : null;
            if ((Largest(shape, ink) ?? (tight is null ? null : Largest(tight, ink))) is not { } largest)
                continue;
            yield return largest;
            // Lists, lines beside a number as high as the tape and names that would be cut may be smaller than the height allows.
            var sizes = IsLimited ? LimitedSizes.Select(size => (int)(size * stock.LeastType)) : shape.Figures > 0 && !hasTall && !mayShrink ? [] : content.Grows ? Enumerable.Range(_least, largest.Plain - _least).Where(size => (largest.Plain - size) % 3 == 0) : Between(_readable, largest.Plain);
            if (hasTall)
                sizes = sizes.Append((int)(TallPlan.MostBeside(stock.Tape.WidthMm, _dot) / shape.Ratio)).Where(size => size >= _readable);
            if (hasTall && stock.LeastFigure > 0)
                sizes = sizes.Append((int)Math.Ceiling(stock.LeastFigure / shape.Ratio)).Where(size => size >= _readable);
            foreach (var size in sizes.Where(size => size < largest.Plain))
            {
                if (RowPlan.Largest(largest.Shape, ink, height, _air, _least, size) is { } smaller)
                    yield return smaller with { Spared = largest.Plain - smaller.Plain };
            }
        }

        RowPlan? Largest(RowShape shape, Ink ink) => RowPlan.Largest(shape, ink, height, _air, _least, Math.Max(_least, _most));
    }

    private bool MayShrink(IReadOnlyList<LabelPanel> panels) => _tall < 1 || panels.Any(panel => panel.Figure is { MayBeCut: true });

    private static IEnumerable<int> Between(int least, int most) =>
        Enumerable.Range(0, Sizes).Select(step => least + step * (most - least) / Sizes).Distinct();

    private IEnumerable<RowShape> Shapes(IReadOnlyList<LabelPanel> panels)
    {
        var figures = panels.Select(panel => panel.Figure).OfType<Figure>().Where(figure => !figure.IsTall).ToList();
        var breaks = stock.BreaksCaptions;
        var rows = Math.Min(MostRows, panels.Sum(panel => panel.Lines.Sum(line => Typing.MostRows(line, breaks))));
        if (figures.Count == 0)
            return Enumerable.Range(1, Math.Max(1, rows)).Select(count => new RowShape(0, CaptionPlace.Inline, count, 1) { BreaksCaptions = breaks });
        var captions = figures.Any(figure => figure.Caption.Length > 0) ? Enum.GetValues<CaptionPlace>() : [CaptionPlace.Inline];
        return from stacked in figures.Count > 1 ? (int[])[1, figures.Count] : [1]
               from caption in captions
               from details in Enumerable.Range(0, Math.Min(rows, breaks ? 6 : 4) + 1)
               from ratio in _tall < 0.6 ? LeastRatios : IsNarrow ? NarrowRatios : Ratios
               select new RowShape(stacked, caption, details, ratio) { BreaksCaptions = breaks, Uncaptioned = stacked == 1 ? 0 : figures.TakeWhile(figure => figure.Caption.Length == 0).Count() };
    }

    // Plain rows leave room for every letter of the alphabet, so that labels of one roll are alike. On narrow tape it is digits that give a row its height: a name is set smaller for its accents, and under a "May" stands nothing.
    private Ink InkOf(IReadOnlyList<LabelPanel> panels, bool digitsOnly)
    {
        var figures = panels.Select(panel => panel.Figure).OfType<Figure>().Where(figure => !figure.IsTall);
        return new Ink([.. panels.SelectMany(panel => panel.Lines).Select(line => typing.Shape(line, line.Text)), HighAndLow],
            [.. figures.Select(figure => digitsOnly ? Digits : typing.Shape(figure.Value, true)).Distinct()]);
    }
}
