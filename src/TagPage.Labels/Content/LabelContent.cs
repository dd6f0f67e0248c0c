namespace TagPage.Labels.Content;

/// <summary>What goes on one label.</summary>
/// <param name="Lines">The most important first; empty texts are left out.</param>
/// <param name="Tag">The tag whose square is printed, if any.</param>
public sealed record LabelContent(IReadOnlyList<LabelLine> Lines, LabelTag? Tag = null)
{
    /// <summary>The shop's logo, already black and white; dropped before any line is.</summary>
    public Picture? Logo { get; init; }
}
