using TagPage.Labels.Content;

namespace TagPage.Labels.Layout;

/// <summary>What of a label's content is there to be set, and how much of it is set large.</summary>
internal static class Printable
{
    /// <summary>Without what is empty. A line of nothing but missing glyphs stays, so that it is told.</summary>
    public static IReadOnlyList<LabelPanel> Of(IReadOnlyList<LabelPanel> panels, Typing typing)
    {
        return
        [
            .. panels
                .Select(panel => new LabelPanel(panel.Figure is { } figure && HasGlyphs(figure.Value) ? figure : null, [.. panel.Lines.Where(IsTold)]))
                .Where(panel => panel.Figure is not null || panel.Lines.Count > 0),
        ];

        bool HasGlyphs(string text) => typing.Shape(text, true).Text.Length > 0;

        bool IsTold(LabelLine line) => HasGlyphs(line.Text) || typing.Shape(line.Text, line.IsBold).Missing.Count > 0;
    }

    /// <summary>The same with the least important figures set as bold lines.</summary>
    public static IReadOnlyList<LabelPanel> Demoted(IReadOnlyList<LabelPanel> panels, int count)
    {
        var figures = panels.Select(panel => panel.Figure).OfType<Figure>().OrderByDescending(figure => figure.Rank).Take(count).ToList();
        return [.. panels.Select(panel => panel.Figure is { } figure && figures.Contains(figure) ? new LabelPanel(null, [AsLine(figure), .. panel.Lines]) : panel)];
    }

    /// <summary>Whether one of the lines ends the label.</summary>
    public static bool HasEnd(IReadOnlyList<LabelPanel> panels) => panels.Any(panel => panel.Lines.Any(line => line.Ends));

    private static LabelLine AsLine(Figure figure) => new(figure.Name, $"{figure.Value} {figure.Unit}".TrimEnd())
    {
        Rank = figure.Rank,
        Caption = figure.Caption,
        WasFigure = true,
        IsBold = true,
        MayBeCut = figure.MayBeCut,
    };
}
