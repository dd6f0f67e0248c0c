using TagPage.Labels.Content;
using TagPage.Labels.Text;

namespace TagPage.Labels.Layout;

/// <summary>How large figures as high as the tape are set, in dots, and whether the second stands under the first.</summary>
internal sealed record TallPlan(int Size, int Baseline, int SecondSize, int SecondBaseline)
{
    // What can be read across a hall, of a tape of up to 24 mm; beside it or under it the second.
    private const double MostMm = 14, WideMm = 24, SecondShare = 0.42;

    private static readonly double[] Shares = [1, 0.92, 0.85, 0.78, 0.72, WideMm / 36, 0.55, 0.4];

    public bool IsStacked => SecondBaseline > Baseline;

    /// <summary>What it costs against the largest, in mm of length.</summary>
    public double Price { get; private init; }

    public (int Size, int Baseline) Of(Figure figure) => figure.IsSecond ? (SecondSize, SecondBaseline) : (Size, Baseline);

    /// <summary>The largest figure beside such a number on a racket: that of its bag is no smaller.</summary>
    public static int MostBeside(double tapeMm, double dotMm) => (int)(0.54 * MostMm * Math.Max(1, tapeMm / WideMm) / dotMm);

    /// <summary>All that may be tried; the first gives way before the second does.</summary>
    public static IEnumerable<TallPlan> All(IReadOnlyList<LabelPanel> panels, Typing typing, int height, double tapeMm, double dotMm)
    {
        var tall = panels.Select(panel => panel.Figure).OfType<Figure>().Where(figure => figure.IsTall).ToLookup(figure => figure.IsSecond, figure => typing.Shape(figure.Text, true));
        var (first, second) = (tall[false].ToList(), tall[true].ToList());
        if (first.Count == 0)
            return [new TallPlan(0, 0, 0, 0)];
        var most = Math.Min(height, MostMm * Math.Max(1, tapeMm / WideMm) / dotMm);
        return second.Count == 0
            ? Shares.Select(share => InRow(first, second, most * share, 0, height) with { Price = 4500 * (1 - share) })
            : from other in Shares
              from share in Shares
              where share >= 0.7 * other && share <= other
              from plan in (TallPlan?[])[InRow(first, second, most * share, SecondShare * MostMm / dotMm * Math.Max(1, tapeMm / WideMm) * other, height), Stacked(first, second, most * share, SecondShare * most * other, height)]
              where plan is not null
              select plan with { Price = 2000 * (1 - share) + 6000 * (1 - other) };
    }

    // On one line; what hangs down from the second lifts it off the tape's edge.
    private static TallPlan InRow(List<ShapedText> first, List<ShapedText> second, double room, double other, int height)
    {
        var (size, beside) = (Largest(first, room), Second(second, other, room));
        var baseline = (height + Up(first, size) - Down(first, size)) / 2;
        return new TallPlan(size, baseline, beside, second.Count == 0 ? baseline : Math.Min(baseline, height - Down(second, beside)));
    }

    private static TallPlan? Stacked(List<ShapedText> first, List<ShapedText> second, double room, double other, int height)
    {
        var (size, under) = (Largest(first, room), Second(second, other, height));
        var free = height - Up(first, size) - Down(first, size) - Up(second, under) - Down(second, under);
        if (free < height / 20)
            return null;
        var baseline = Up(first, size);
        return new TallPlan(size, baseline, under, baseline + Down(first, size) + Math.Min(free, height / 10) + Up(second, under));
    }

    // As high as digits may be; what hangs down comes on top.
    private static int Second(List<ShapedText> texts, double digits, double room)
    {
        var size = Largest(texts, room);
        while (size > 1 && texts.Count > 0 && Up(texts, size) > digits)
            size--;
        return size;
    }

    private static int Largest(List<ShapedText> texts, double room)
    {
        if (texts.Count == 0)
            return 0;
        var size = (int)(1.5 * room);
        while (size > 1 && Up(texts, size) + Down(texts, size) > room)
            size--;
        return size;
    }

    private static int Up(List<ShapedText> texts, int size) => texts.Max(text => text.InkUp(size));

    private static int Down(List<ShapedText> texts, int size) => texts.Max(text => text.InkDown(size));
}
