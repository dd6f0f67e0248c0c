namespace TagPage.Labels.Text;

/// <summary>A stretch of text in one font and one direction.</summary>
/// <param name="Font">The font that has its characters.</param>
/// <param name="Text">Its characters in the order they are read.</param>
/// <param name="IsRightToLeft">Hebrew and Arabic.</param>
/// <param name="Glyphs">In the order they are seen, left to right.</param>
public sealed record GlyphRun(LabelFont Font, string Text, bool IsRightToLeft, IReadOnlyList<Glyph> Glyphs)
{
    /// <summary>Width for type of size 1.</summary>
    public double Width { get; } = Glyphs.Sum(glyph => (double)glyph.Advance) / Font.UnitsPerEm;

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
