using TagPage.Labels.Content;

namespace TagPage.Labels.Layout;

/// <summary>Sets one figure into a column, with its caption and its unit.</summary>
internal sealed class FigureSetter(RowPlan plan, Typing typing, int room)
{
    /// <summary>What is left of it where it had to be cut; else null.</summary>
    public string? Set(Column column, Figure figure, int row)
    {
        var (y, air) = (plan.FigureRows[row], Math.Max(2, (int)(0.35 * plan.Plain)));
        var x = SetCaption(column, figure, row, air);
        if (plan.Shape.Captions != CaptionPlace.Above && plan.Hangs(typing.Shape(figure.Caption, false)))
            column.Indent = x;
        var cut = Cut(figure);
        var value = typing.Shape(cut ?? figure.Value, true);
        var size = figure.MayBeCut ? plan.SizeOf(value) : plan.Figure;
        column.Set(new Word(x, y, size, value));
        if (figure.Unit.Length > 0)
            column.Set(new Word(x + value.WidthAt(size) + air, y, plan.Plain, typing.Shape(figure.Unit, false)));
        return cut;
    }

    // Gives where the value begins.
    private int SetCaption(Column column, Figure figure, int row, int air)
    {
        var words = LabelLine.Words(figure.Caption);
        if (words.Count == 0)
            return 0;
        if (plan.Shape.Captions == CaptionPlace.Above)
        {
            column.Set(new Word(0, plan.CaptionRows[row], plan.Plain, typing.Shape(figure.Caption, false)));
            return 0;
        }
        if (plan.Shape.Captions == CaptionPlace.Inline || words.Count == 1)
            return End(column, figure.Caption, plan.FigureRows[row]) + air;
        var rows = Typing.Broken(words, 2);
        return Math.Max(End(column, rows[0], plan.UpperRows[row]), End(column, rows[1], plan.FigureRows[row])) + air;
    }

    private int End(Column column, string text, int baseline)
    {
        var shaped = typing.Shape(text, false);
        column.Set(new Word(0, baseline, plan.Plain, shaped));
        return shaped.WidthAt(plan.Plain);
    }

    // Beside other figures a name may take two fifths of the label, no more.
    private string? Cut(Figure figure)
    {
        return figure.MayBeCut && !Fits(figure.Value) ? Typing.Cut(figure.Value, "", Fits) : null;

        bool Fits(string text) => typing.Shape(text, true).WidthAt(plan.Figure) <= (plan.Shape.Figures > 1 ? 0.9 : 0.4) * room;
    }
}
