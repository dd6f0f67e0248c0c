namespace TagPage.Labels.Text;

/// <summary>A line of text as it will be drawn.</summary>
/// <param name="Text">What is printed, without what no font has.</param>
/// <param name="Runs">In the order they are seen, left to right.</param>
/// <param name="Missing">What was asked for and no bundled font has, each once.</param>
public sealed record ShapedText(string Text, IReadOnlyList<GlyphRun> Runs, IReadOnlyList<string> Missing)
{
    private readonly Dictionary<int, (int Width, int Up, int Down)> _sizes = [];

    /// <summary>Width in whole printer dots, for type of a size in dots.</summary>
    public int WidthAt(int size) => At(size).Width;

    /// <summary>How far ink reaches up from the line it stands on, in whole dots.</summary>
    public int InkUp(int size) => At(size).Up;

    /// <summary>And down; never under 0.</summary>
    public int InkDown(int size) => At(size).Down;

    private (int Width, int Up, int Down) At(int size)
    {
        lock (_sizes)
        {
            if (!_sizes.TryGetValue(size, out var at))
                _sizes[size] = at = Measure(size);
            return at;
        }
    }

    private (int Width, int Up, int Down) Measure(int size)
    {
        var ink = Runs.SelectMany(run => run.Glyphs.Select(glyph => run.Font.ForSize(size).Ink(glyph, size))).Append((Up: 0, Down: 0)).ToList();
        return ((int)Math.Ceiling(Runs.Sum(run => run.WidthAt(size)) - 1e-9), ink.Max(box => box.Up), ink.Max(box => box.Down));
    }

    /// <summary>Two texts of one line with a blank between them, such as a plain word and a bold number.</summary>
    internal ShapedText And(ShapedText next) =>
        new($"{Text} {next.Text}", [.. Runs, Shaper.Blank, .. next.Runs], [.. Missing.Union(next.Missing)]);
}
