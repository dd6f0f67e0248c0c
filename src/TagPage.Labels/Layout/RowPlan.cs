using TagPage.Labels.Text;

namespace TagPage.Labels.Layout;

/// <summary>Where a figure's caption stands: in front of it in two rows or in one, or over it.</summary>
internal enum CaptionPlace { Stacked, Inline, Above }

/// <summary>How far ink reaches up and down from the line it stands on, by size in dots: of plain lines and of figures.</summary>
internal sealed class Ink(IReadOnlyList<ShapedText> plain, IReadOnlyList<ShapedText> figures)
{
    private readonly Dictionary<int, (int Up, int Down)> _plain = [], _figures = [];

    public int Up(int size) => Of(_plain, plain, size).Up;

    public int Down(int size) => Of(_plain, plain, size).Down;

    public int FigureUp(int size) => Of(_figures, figures, size).Up;

    public int FigureDown(int size) => Of(_figures, figures, size).Down;

    private static (int Up, int Down) Of(Dictionary<int, (int Up, int Down)> known, IReadOnlyList<ShapedText> texts, int size)
    {
        if (!known.TryGetValue(size, out var reach))
            known[size] = reach = texts.Count == 0 ? default : (texts.Max(text => text.InkUp(size)), texts.Max(text => text.InkDown(size)));
        return reach;
    }
}

/// <summary>What rows a label has: so many figures one above the other, and lines under them.</summary>
/// <param name="Figures">0 or 1; more where figures stand one above the other.</param>
/// <param name="Captions">Of the figures.</param>
/// <param name="Details">Rows of plain type.</param>
/// <param name="Ratio">Size of figures against plain type, at most.</param>
internal sealed record RowShape(int Figures, CaptionPlace Captions, int Details, double Ratio)
{
    /// <summary>No room is kept under figures for what hangs down from plain words beside them: such a column has no row below.</summary>
    public bool IsTight { get; init; }

    /// <summary>Whether a caption may stand in a row of its own, over its line.</summary>
    public bool BreaksCaptions { get; init; }

    /// <summary>How many of the figures, from above, have no caption and need no row for it.</summary>
    public int Uncaptioned { get; init; }
}

/// <summary>One set of baselines for all columns of a label, in dots from the first printable one.</summary>
/// <param name="Shape">What it was made for.</param>
/// <param name="Plain">Size of plain type, in dots.</param>
/// <param name="Figure">Size of figures, in dots.</param>
/// <param name="CaptionRows">The row over each figure where captions stand above.</param>
/// <param name="FigureRows">The line each figure stands on.</param>
/// <param name="UpperRows">A row of plain type beside the upper half of each figure, where it is tall enough; else its own.</param>
/// <param name="DetailRows">Under the figures.</param>
internal sealed record RowPlan(
    RowShape Shape, int Plain, int Figure, IReadOnlyList<int> CaptionRows, IReadOnlyList<int> FigureRows, IReadOnlyList<int> UpperRows, IReadOnlyList<int> DetailRows)
{
    /// <summary>How far down from a figure's line ink may reach where a row follows.</summary>
    public int Hang { get; init; }

    /// <summary>How far up ink of a figure may reach.</summary>
    public int Reach { get; init; }

    /// <summary>How many dots smaller its plain type is than it could be.</summary>
    public int Spared { get; init; }

    /// <summary>The plan with the largest plain type that fits a height, or null.</summary>
    /// <param name="shape">What it is made for.</param>
    /// <param name="ink">Of what goes in.</param>
    /// <param name="height">There is, in dots.</param>
    /// <param name="air">Dots that stay clear between two rows, at least.</param>
    /// <param name="least">Size of plain type, in dots.</param>
    /// <param name="most">Size of plain type, in dots.</param>
    public static RowPlan? Largest(RowShape shape, Ink ink, int height, int air, int least, int most)
    {
        for (var plain = most; plain >= least; plain--)
        {
            if (new Setting(shape, ink, plain, air).Plan(height) is { } plan)
                return plan;
        }
        return null;
    }

    /// <summary>Of all kinds.</summary>
    public int Rows { get; } = CaptionRows.Concat(UpperRows).Concat(FigureRows).Concat(DetailRows).Distinct().Count();

    /// <summary>Whether plain words on a figure's line reach into the row below.</summary>
    public bool Hangs(ShapedText words) => words.InkDown(Plain) > Hang;

    /// <summary>The largest size, up to that of figures, at which a name's accents stay in the row.</summary>
    public int SizeOf(ShapedText name)
    {
        var size = Figure;
        while (size > Plain && name.InkUp(size) > Reach)
            size--;
        return size;
    }

    /// <summary>All rows of a column without a figure.</summary>
    public IEnumerable<int> AllRows => CaptionRows.Concat(UpperRows).Concat(Shape.IsTight ? [] : FigureRows).Concat(DetailRows).Distinct().Order();

    private sealed class Setting(RowShape shape, Ink ink, int plain, int air)
    {
        private readonly int _figure = (int)(shape.Ratio * plain);
        private readonly int _ascent = ink.Up(plain), _descent = ink.Down(plain), _air = Math.Max(air, (int)Math.Round(0.06 * plain));

        // A large figure with a line right under it looks crowded.
        private readonly int _underFigure = (int)Math.Round(0.12 * (int)(shape.Ratio * plain));

        private int Above => ink.FigureUp(_figure);

        private int TwoRows => 2 * _ascent + _descent + _air;

        // Plain words stand on the same line: captions, units, and the lines of other columns.
        private int Below => shape.IsTight ? ink.FigureDown(_figure) : Math.Max(ink.FigureDown(_figure), _descent);

        public RowPlan? Plan(int height)
        {
            var betweenRows = Math.Max(0, shape.Figures + shape.Details - 1) * _air;
            if (shape.Details * (_ascent + _descent) + shape.Figures * (Above + Below) + betweenRows > height)
                return null;
            if (shape.Figures > 0 && shape.Captions == CaptionPlace.Stacked && Above < TwoRows)
                return null;
            var gaps = Math.Max(0, shape.Figures - 1) + shape.Details - (shape.Figures == 0 ? 1 : 0);
            var spare = height - Place(0).Height;
            if (spare < 0)
                return null;
            var more = gaps <= 0 ? 0 : Math.Min(spare / gaps, (int)(0.3 * plain));
            var (plan, used) = Place(more);
            return plan.MovedBy((height - used) / 2);
        }

        private (RowPlan Plan, int Height) Place(int more)
        {
            List<int> captions = [], figures = [], uppers = [], details = [];
            var (y, end) = (0, 0);
            for (var i = 0; i < shape.Figures; i++)
            {
                if (shape.Captions == CaptionPlace.Above && i >= shape.Uncaptioned)
                {
                    captions.Add(y + _ascent);
                    y += _ascent + _descent + _air;
                }
                else if (shape.Captions == CaptionPlace.Above)
                {
                    captions.Add(y + Above);
                }
                figures.Add(y + Above);
                if (Above >= TwoRows)
                    uppers.Add(y + Above - _ascent - _descent - _air);
                end = y + Above + Below;
                y = Math.Max(end + _air, y + Above + ink.FigureDown(_figure) + _underFigure) + more;
            }
            for (var i = 0; i < shape.Details; i++)
            {
                details.Add(y + _ascent);
                end = y + _ascent + _descent;
                y = end + _air + more;
            }
            return (new RowPlan(shape, plain, _figure, captions, figures, uppers, details) { Hang = Below, Reach = Above }, end);
        }
    }

    private RowPlan MovedBy(int dots) => this with
    {
        CaptionRows = [.. CaptionRows.Select(y => y + dots)],
        FigureRows = [.. FigureRows.Select(y => y + dots)],
        UpperRows = [.. UpperRows.Select(y => y + dots)],
        DetailRows = [.. DetailRows.Select(y => y + dots)],
    };
}
