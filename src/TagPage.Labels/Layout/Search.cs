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
    private const double MostTallMm = 14;
    private const double LeastAirMm = 0.15;

    /// <summary>Of plain type that are tried in lists.</summary>
    private const int Sizes = 6;

    /// <summary>Against the type of narrower tape, where the label may be no longer than there.</summary>
    private static readonly double[] LimitedSizes = [1, 1.05, 1.1, 1.2, 1.3];

    private static readonly double[] Ratios = [2.5, 2.1, 1.7, 1.3];

    private static readonly double[] RowPrices = [0.5, 2, 8];

    private static readonly double[] Shares = [1, 0.85, 0.7, 0.55, 0.4];

    private static readonly ShapedText X = Shaper.Shape("x"), HighAndLow = Shaper.Shape("lp");

    private readonly double _dot = stock.Printer.DotMm;
    private readonly int _least = (int)Math.Ceiling(stock.Printer.PointsToDots(Layouter.LeastPoints) - 1e-9);
    // Height against that of tape of 12 mm, whose type is what the settings speak of.
    private readonly double _tall = height * stock.Printer.DotMm / 10;

    private int _most;

    private readonly int _air = Math.Max(1, (int)Math.Round(LeastAirMm / stock.Printer.DotMm));

    private int _readable;

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
            for (var demoted = 0; demoted <= panels.Count(panel => panel.Figure is not null) && best.Filling is not { Loss: 0 }; demoted++)
                best = Best(Printable.Demoted(panels, demoted), end, 4000 * demoted, best);
        }
        return best.Filling;
    }

    private (Filling? Filling, double Cost) Best(IReadOnlyList<LabelPanel> panels, EndLine end, double price, (Filling? Filling, double Cost) best)
    {
        var breaks = panels.Any(panel => panel.Lines.Any(line => line.Parts.Count > 2)) ? RowPrices : [1];
        var shares = panels.Any(panel => panel.Figure is { IsTall: true }) ? Shares : [1];
        var plans = Plans(panels).Select(plan => (Plan: plan, Price: Price(plan), Area: LeastArea(plan, panels))).OrderBy(priced => priced.Price).ToList();
        foreach (var (share, (plan, planPrice, area), rowPrice) in from share in shares from priced in plans from rowPrice in breaks select (share, priced, rowPrice))
        {
            var least = price + planPrice + 4500 * (1 - share);
            if (least + (IsLimited ? area : Math.Min(area, Filling.LeastLoss)) < best.Cost
                && (!IsLimited || area <= Area(room))
                && Filling.Of(plan, panels, end, typing, room, rowPrice, IsLimited ? 0 : best.Cost - least, () => Tall(panels, share)) is { } filling
                && least + filling.Loss + 8 * filling.EmptyRows * Math.Max(1, _tall) + (content.Grows ? 0 : Area(filling.Width)) is var cost && cost < best.Cost)
                best = (filling, cost);
        }
        return best;
    }

    // What a plan costs whatever is filled into it, against a mm of length.
    private double Price(RowPlan plan)
    {
        if (content.Grows)
            return 10_000 * Math.Abs(plan.Shape.Details - content.Panels.Sum(panel => panel.Lines.Count)) + 0.1 * (_most - plan.Plain);
        var small = plan.Plain < _readable ? 2500 + 1000 * _dot * (_readable - plan.Plain) : 0;
        var figures = plan.Shape.Figures == 0 ? 0 : 14 * (Ratios[0] - plan.Shape.Ratio);
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

    // A list is all type: there it is worth more length. So it is where the length is that of narrower tape anyway.
    private double Strain(RowPlan plan) => 100 * (plan.Shape.Figures == 0 && content.Panels.Sum(panel => panel.Lines.Count) >= FewestOfList ? 2 : 1) * (IsLimited ? 2 : 1) * Math.Max(0, 1.3 * Math.Pow(_tall, 0.6) - XHeight(plan.Plain));

    // A mm of wide tape is more tape.
    private double Area(int width) => width * _dot * Math.Sqrt(Math.Max(1, _tall));

    // Where nothing is given up, all type stands in the plan's rows.
    private double LeastArea(RowPlan plan, IReadOnlyList<LabelPanel> panels)
    {
        if (content.Grows)
            return 0;
        var type = panels.Sum(panel => (panel.Figure is { IsTall: false } figure ? typing.Shape(figure.Value, true).WidthAt(plan.Figure) : 0) + panel.Lines.Sum(line => typing.Shape(line, line.Text).WidthAt(plan.Plain)));
        return Area(type / plan.Rows);
    }

    private IEnumerable<RowPlan> Plans(IReadOnlyList<LabelPanel> panels)
    {
        var (ink, hasTall) = (InkOf(panels), panels.Any(panel => panel.Figure is { IsTall: true }));
        var mayShrink = _tall < 1 || panels.Any(panel => panel.Figure is { MayBeCut: true });
        foreach (var shape in Shapes(panels))
        {
            var tight = shape is { Figures: 1, Details: > 0 } ? shape with { IsTight = true } : null;
            if ((Largest(shape) ?? (tight is null ? null : Largest(tight))) is not { } largest)
                continue;
            yield return largest;
            // Lists, lines beside a number as high as the tape and names that would be cut may be smaller than the height allows.
            var sizes = IsLimited ? LimitedSizes.Select(size => (int)(size * stock.LeastType)) : shape.Figures > 0 && !hasTall && !mayShrink ? [] : content.Grows ? Enumerable.Range(_least, largest.Plain - _least).Where(size => (largest.Plain - size) % 3 == 0) : Between(_readable, largest.Plain);
            foreach (var size in sizes.Where(size => size < largest.Plain))
            {
                if (RowPlan.Largest(largest.Shape, ink, height, _air, _least, size) is { } smaller)
                    yield return smaller with { Spared = largest.Plain - smaller.Plain };
            }
        }

        RowPlan? Largest(RowShape shape) => RowPlan.Largest(shape, ink, height, _air, _least, Math.Max(_least, _most));
    }

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
               from ratio in Ratios
               select new RowShape(stacked, caption, details, ratio) { BreaksCaptions = breaks, Uncaptioned = stacked == 1 ? 0 : figures.TakeWhile(figure => figure.Caption.Length == 0).Count() };
    }

    // Plain rows leave room for every letter of the alphabet, so that labels of one roll are alike.
    private Ink InkOf(IReadOnlyList<LabelPanel> panels)
    {
        var figures = panels.Select(panel => panel.Figure).OfType<Figure>().Where(figure => !figure.IsTall);
        return new Ink([.. panels.SelectMany(panel => panel.Lines).Select(line => typing.Shape(line, line.Text)), HighAndLow],
            [.. figures.Select(figure => typing.Shape(figure.Value, true))]);
    }

    // All of one label are of one size, and no higher than one can read across a hall.
    private (int Size, int Baseline) Tall(IReadOnlyList<LabelPanel> panels, double share)
    {
        var tall = panels.Select(panel => panel.Figure).OfType<Figure>().Where(other => other.IsTall).Select(other => typing.Shape(other.Text, true)).ToList();
        var room = Math.Min(height, MostTallMm / _dot) * share;
        var size = Math.Max(_least, (int)(1.5 * room));
        while (size > _least && tall.Max(text => text.InkUp(size)) + tall.Max(text => text.InkDown(size)) > room)
            size--;
        return (size, (height + tall.Max(text => text.InkUp(size)) - tall.Max(text => text.InkDown(size))) / 2);
    }
}
