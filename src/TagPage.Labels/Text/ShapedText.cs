namespace TagPage.Labels.Text;

/// <summary>A line of text as it will be drawn.</summary>
/// <param name="Text">What is printed, without what no font has.</param>
/// <param name="Runs">In the order they are seen, left to right.</param>
/// <param name="Missing">What was asked for and no bundled font has, each once.</param>
public sealed record ShapedText(string Text, IReadOnlyList<GlyphRun> Runs, IReadOnlyList<string> Missing)
{
    /// <summary>Width for type of size 1.</summary>
    public double Width { get; } = Runs.Sum(run => run.Width);
}
