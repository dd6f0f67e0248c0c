using SkiaSharp;
using TagPage.Labels.Render.Pdf;
using TagPage.Labels.Text;

namespace TagPage.Labels.Papers;

/// <summary>The fonts of one sheet, with the outlines of the glyphs that stand on it alone: a whole Japanese font has two megabytes.</summary>
internal sealed class SheetFonts : IDisposable
{
    private readonly Dictionary<LabelFont, HashSet<ushort>> _glyphs = [];
    private readonly Dictionary<LabelFont, SKTypeface> _typefaces = [];

    /// <summary>To be told of everything that is written before the first typeface is asked for.</summary>
    public void Add(GlyphRun run)
    {
        if (!_glyphs.TryGetValue(run.Font, out var glyphs))
            _glyphs[run.Font] = glyphs = [];
        glyphs.UnionWith(run.Glyphs.Select(glyph => glyph.Id));
    }

    public SKTypeface TypefaceOf(LabelFont font)
    {
        if (!_typefaces.TryGetValue(font, out var typeface))
        {
            using var data = SKData.CreateCopy(TrueTypeThinned.Of(font.Data, _glyphs[font]));
            _typefaces[font] = typeface = SKTypeface.FromData(data);
        }
        return typeface;
    }

    public void Dispose()
    {
        foreach (var typeface in _typefaces.Values)
            typeface.Dispose();
    }
}
