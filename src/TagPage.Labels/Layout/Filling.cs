using TagPage.Labels.Content;
using TagPage.Labels.Text;

namespace TagPage.Labels.Layout;

/// <summary>When the line that ends a label gets its room: after all others, before them, or before them and saying no more than it must.</summary>
internal enum EndLine { Last, First, Short }

/// <summary>
/// A label's figures and lines in columns on one plan of rows. Lines go in by rank, each to where it makes the label
/// least longer; what finds no room says less, is cut, or goes, and a sentence tells so.
/// </summary>
internal sealed class Filling
{
    /// <summary>What is lost where a line says a little less.</summary>
    public const double LeastLoss = 60;

    /// <summary>What is lost where the line that ends the label says less.</summary>
    private const double MuchLoss = 1_500;

    private const int LeastNeeded = 2;

    private readonly RowPlan _plan;
    private readonly Typing _typing;
    private readonly int _room;
    private readonly double _rowPrice;
    private readonly EndLine _end;
    private bool _areNumbersAlone, _saysLess;
    private int[]? _allRows;
    private readonly List<List<Column>> _groups = [];
    private readonly List<(int Rank, string Text)> _said = [];
    private readonly List<string> _warnings = [];

    private Filling(RowPlan plan, EndLine end, Typing typing, int room, double rowPrice) =>
        (_plan, _end, _typing, _room, _rowPrice) = (plan, end, typing, room, rowPrice);

    public RowPlan Plan => _plan;

    public IReadOnlyList<string> Warnings => _warnings;

    /// <summary>What is printed, the most important first.</summary>
    public IEnumerable<string> Said => _said.OrderBy(pair => pair.Rank).Select(pair => pair.Text);

    /// <summary>How much was given up; 0 for nothing.</summary>
    public double Loss { get; private set; }

    /// <summary>Whether as much was given up as where the line that ends the label says less.</summary>
    public bool LosesMuch => Loss >= MuchLoss;

    /// <summary>Of the smallest of what is set large, in dots; 0 where there is nothing such.</summary>
    public static int FigureSizeOf(RowPlan plan, IReadOnlyList<LabelPanel> panels) =>
        panels.Any(panel => panel.Lines.Any(line => line.WasFigure)) ? plan.Plain : panels.Any(panel => panel.Figure is { IsTall: false }) ? plan.Figure : 0;

    /// <summary>The same of this label.</summary>
    public int FigureSize { get; private init; }

    /// <summary>Rows that nothing stands in.</summary>
    public int EmptyRows => _plan.DetailRows.Count(row => !Columns.Any(column => column.Words.Any(word => word.Baseline == row)));

    /// <summary>How often a line goes on in a next row.</summary>
    public int Breaks { get; private set; }

    /// <summary>Figures with free tape under them, where there are rows to stand in it.</summary>
    public int BareFigures => _plan.Shape.Details < 2 ? 0 : Columns.Count(column => column is { HasFigure: true, IsBare: true } && column.Words.All(word => word.Size <= _plan.Figure));

    // Where nothing but numbers as high as the tape stand, there is no plain type to go by.
    public int Gap => Math.Max(4, _areNumbersAlone ? Columns.SelectMany(column => column.Words).Select(word => word.Size / 2).DefaultIfEmpty(0).Min() : _plan.Plain);

    private IEnumerable<Column> Columns => _groups.SelectMany(group => group).Where(column => column.Width > 0);

    public int Width => Columns.Sum(column => column.Width) + Gap * Math.Max(0, Columns.Count() - 1);

    /// <summary>Null where not even the figures fit, or too much would be given up.</summary>
    /// <param name="plan">The rows.</param>
    /// <param name="panels">What goes in.</param>
    /// <param name="end">When the line that ends the label gets its room.</param>
    /// <param name="saysLess">Whether other lines say no more than they must.</param>
    /// <param name="typing">The label's own.</param>
    /// <param name="room">Width there is, in dots.</param>
    /// <param name="rowPrice">What one more row for the same line must spare, in sizes of type.</param>
    /// <param name="mostLoss">More given up than this makes it useless.</param>
    /// <param name="tall">Sizes of figures as high as the tape.</param>
    public static Filling? Of(RowPlan plan, IReadOnlyList<LabelPanel> panels, EndLine end, bool saysLess, Typing typing, int room, double rowPrice, double mostLoss, TallPlan tall)
    {
        var filling = new Filling(plan, end, typing, room, rowPrice) { _saysLess = saysLess, _areNumbersAlone = panels.All(panel => panel is { Figure.IsTall: true, Lines.Count: 0 }), FigureSize = FigureSizeOf(plan, panels) };
        filling.SetFigures(panels, tall);
        if (filling.Width > room)
            return null;
        var lines = panels.SelectMany((panel, group) => panel.Lines.Select(line => (Line: line, Group: group)));
        foreach (var (line, group) in lines.OrderBy(pair => filling.Turn(pair.Line)))
        {
            if (filling.Loss > mostLoss)
                return null;
            filling.Place(line, filling._groups[filling.HomeOf(panels, group)]);
        }
        return filling;
    }

    private int Turn(LabelLine line) => !line.Ends ? line.Rank : _end == EndLine.Last ? int.MaxValue : -1;

    public IEnumerable<Word> Words()
    {
        var x = 0;
        foreach (var column in Columns)
        {
            foreach (var word in column.Words)
                yield return word with { X = word.X + x };
            x += column.Width + Gap;
        }
    }

    // Where figures stand one above the other, all their lines stand under them.
    private int HomeOf(IReadOnlyList<LabelPanel> panels, int group) =>
        _plan.Shape.Figures > 1 && panels[group].Figure is { IsTall: false } ? panels.TakeWhile(panel => panel.Figure is null or { IsTall: true }).Count() : group;

    private void SetFigures(IReadOnlyList<LabelPanel> panels, TallPlan tall)
    {
        var (setter, stack, row) = (new FigureSetter(_plan, _typing, _room), (Column?)null, 0);
        foreach (var panel in panels)
        {
            _groups.Add([]);
            if (panel.Figure is not { } figure)
                continue;
            var isStacked = _plan.Shape.Figures > 1 && !figure.IsTall;
            var column = (isStacked || (figure.IsSecond && tall.IsStacked)) && stack is not null ? stack : ColumnOf(figure);
            if (!_groups.Any(group => group.Contains(column)))
                _groups[^1].Add(column);
            if (figure.IsTall)
                column.Set(new Word(0, tall.Of(figure).Baseline, tall.Of(figure).Size, _typing.Shape(figure.Text, true)));
            else if (setter.Set(column, figure, isStacked ? row++ : 0) is { } cut)
                figure = Cut(figure, cut);
            if (isStacked || (figure.IsTall && tall.IsStacked))
                stack = column;
            Note(figure.Name, _typing.Shape(figure.Value, true));
            _said.Add((figure.Rank, figure.Text));
        }
    }

    private Figure Cut(Figure figure, string cut)
    {
        Lose(400, $"There is no room for all of {figure.Name} (“{figure.Value}”); it is shortened to “{cut}”.");
        return figure with { Value = cut };
    }

    private Column ColumnOf(Figure figure) => figure.IsTall
        ? new Column([], hasFigure: true)
        : new Column(_plan.Hangs(_typing.Shape(figure.Unit, false)) || HangsOut(figure) ? [] : _plan.DetailRows, hasFigure: true);

    private bool HangsOut(Figure figure) => _typing.Shape(figure.Value, true) is var value && value.InkDown(figure.MayBeCut ? _plan.SizeOf(value) : _plan.Figure) > _plan.Hang;

    private void Place(LabelLine line, List<Column> home)
    {
        var whole = _typing.Shape(line, line.Text);
        Note(line.Name, whole);
        if (_typing.Shape(line.Text, line.IsBold).Text.Length == 0 || (!SaysLess(line) && PlaceWhole(line, home)))
            return;
        foreach (var text in line.Shorter)
        {
            if (TryPlace(line, [_typing.Shape(line, text)], home))
            {
                Shortened(line, text, line.Ends ? MuchLoss : LeastLoss);
                return;
            }
        }
        if (line.MayBeCut && Typing.Cut(line.Text, line.KeptEnd, text => BestPlace(line, [_typing.Shape(line, text)], home) is not null) is { } cut)
        {
            TryPlace(line, [_typing.Shape(line, cut)], home);
            Shortened(line, cut, 400 + 400.0 * (line.Text.Length - cut.Length) / line.Text.Length);
            return;
        }
        Lose(line.Ends ? Drop(0) : Drop(line.Rank), $"There is no room for {line.Name} (“{line.Text}”); it is left out.");
    }

    private bool SaysLess(LabelLine line) => line.Shorter.Count > 0 && (line.Ends ? _end == EndLine.Short : _saysLess);

    private static double Drop(int rank) => rank < LeastNeeded ? 20_000 : rank == LeastNeeded ? 8_000 : 2_000 - 100 * rank;

    private void Shortened(LabelLine line, string text, double loss)
    {
        _said.Add((line.Rank, _typing.Shape(line, text).Text));
        Lose(loss, $"There is no room for all of {line.Name} (“{line.Text}”); it is shortened to “{text}”.");
    }

    private void Lose(double loss, string sentence)
    {
        Loss += loss;
        _warnings.Add(sentence);
    }

    private void Note(string name, ShapedText text)
    {
        if (text.Missing.Count > 0)
            _warnings.Add($"No font here has {string.Join(' ', text.Missing)}; {name} is printed without.");
    }

    private bool PlaceWhole(LabelLine line, List<Column> home)
    {
        var ways = Enumerable.Range(1, Typing.MostRows(line, _plan.Shape.BreaksCaptions))
            .Select(rows => _typing.InRows(line, rows)).OfType<IReadOnlyList<ShapedText>>()
            .Select(texts => (Texts: texts, Place: BestPlace(line, texts, home)))
            .Where(way => way.Place is not null).ToList();
        if (ways.Count == 0)
            return false;
        var best = ways.MinBy(way => way.Place!.Value.Total + _rowPrice * way.Texts.Count * _plan.Plain);
        Fill(best.Place!.Value, line, best.Texts, home);
        Breaks += line.Parts.Count > 0 ? best.Texts.Count - 1 : 0;
        _said.Add((line.Rank, _typing.Shape(line, line.Text).Text));
        return true;
    }

    private bool TryPlace(LabelLine line, IReadOnlyList<ShapedText> texts, List<Column> home)
    {
        if (BestPlace(line, texts, home) is not { } place)
            return false;
        Fill(place, line, texts, home);
        return true;
    }

    private void Fill((Column Column, int Row, int X, int Total) place, LabelLine line, IReadOnlyList<ShapedText> texts, List<Column> home)
    {
        if (!_groups.Any(group => group.Contains(place.Column)))
            home.Add(place.Column);
        place.Column.Fill(place.Row, place.X, texts, _plan.Plain, line);
    }

    private (Column Column, int Row, int X, int Total)? BestPlace(LabelLine line, IReadOnlyList<ShapedText> texts, List<Column> home) =>
        PlaceIn(line, texts, home) ?? (line.Stays ? PlaceIn(line with { Stays = false }, texts, home) : null);

    // At home, then in a new column at home, then elsewhere; the first of those that make the label least longer.
    private (Column Column, int Row, int X, int Total)? PlaceIn(LabelLine line, IReadOnlyList<ShapedText> texts, List<Column> home)
    {
        (Column Column, int Row, int X, int Total)? best = null;
        var others = line.Stays ? [] : _groups.Where(group => group != home).SelectMany(group => group);
        var (width, gap) = (Width, Columns.Any() ? Gap : 0);
        foreach (var column in home.Append(New(line, home)).Concat(others))
        {
            if (column.Room(line, texts, _plan.Plain) is not { } room)
                continue;
            var total = width - column.Width + room.Width + (column.Width == 0 ? gap : 0);
            if (total <= _room && (best is null || total < best.Value.Total))
                best = (column, room.Row, room.X, total);
        }
        return best;
    }

    private Column New(LabelLine line, List<Column> home) => new(line.Stays && home.Any(column => column.HasFigure) ? [] : _allRows ??= [.. _plan.AllRows], false);
}
