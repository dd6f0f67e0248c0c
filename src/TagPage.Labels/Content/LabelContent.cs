namespace TagPage.Labels.Content;

/// <summary>What goes on one label.</summary>
/// <param name="Panels">From left to right.</param>
/// <param name="Tag">The tag whose square is printed, if any.</param>
public sealed record LabelContent(IReadOnlyList<LabelPanel> Panels, LabelTag? Tag = null)
{
    /// <summary>The shop's mark, already black and white; given up before anything else is.</summary>
    public Picture? Logo { get; init; }

    /// <summary>Whether type grows as the tape lets it, rather than to the shortest label.</summary>
    public bool Grows { get; init; }
}

/// <summary>What belongs together on a label: a figure, and lines that explain it.</summary>
/// <param name="Figure">Set large; null where there is none.</param>
/// <param name="Lines">In the order they are read.</param>
public sealed record LabelPanel(Figure? Figure, IReadOnlyList<LabelLine> Lines);
