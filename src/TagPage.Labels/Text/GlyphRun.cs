namespace TagPage.Labels.Text;

/// <summary>A stretch of text in one font and one direction.</summary>
/// <param name="Font">The font that has its characters.</param>
/// <param name="Text">Its characters in the order they are read.</param>
/// <param name="IsRightToLeft">Hebrew and Arabic.</param>
/// <param name="Glyphs">In the order they are seen, left to right.</param>
public sealed record GlyphRun(LabelFont Font, string Text, bool IsRightToLeft, IReadOnlyList<Glyph> Glyphs)
{
    /// <summary>The same in the font that a size in dots is drawn with.</summary>
    public GlyphRun ForSize(int size) => this with { Font = Font.ForSize(size) };

    /// <summary>How far the pen moves after each glyph, in printer dots, for type of a size in dots.</summary>
    public IEnumerable<double> Steps(int size) => Glyphs.Select(glyph => Font.ForSize(size).Step(glyph, size));

    /// <summary>Width in printer dots, for type of a size in dots.</summary>
    public double WidthAt(int size) => Steps(size).Sum();

    /// <summary>The characters that a glyph stands for: none where an earlier glyph of its cluster has them already.</summary>
    internal string TextOf(int index)
    {
        var cluster = Glyphs[index].Cluster;
        for (var earlier = 0; earlier < index; earlier++)
        {
            if (Glyphs[earlier].Cluster == cluster)
                return "";
        }
        var next = Glyphs.Where(glyph => glyph.Cluster > cluster).Select(glyph => glyph.Cluster).DefaultIfEmpty(Text.Length).Min();
        return Text[cluster..next];
    }
}
