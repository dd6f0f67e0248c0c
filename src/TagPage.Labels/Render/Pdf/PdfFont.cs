using System.Globalization;
using System.Text;
using TagPage.Labels.Text;

namespace TagPage.Labels.Render.Pdf;

/// <summary>One font of a PDF: the glyphs used, their file cut down to them, and what text they stand for.</summary>
internal sealed class PdfFont
{
    private readonly LabelFont _font;
    private readonly TrueTypeSubset _subset;
    private readonly Dictionary<int, string> _texts = [];

    public PdfFont(LabelFont font, IReadOnlyList<GlyphRun> runs)
    {
        _font = font;
        _subset = new TrueTypeSubset(font.Data, runs.SelectMany(run => run.Glyphs).Select(glyph => glyph.Id).Distinct().Order());
        foreach (var run in runs)
        {
            for (var i = 0; i < run.Glyphs.Count; i++)
            {
                if (run.TextOf(i) is { Length: > 0 } text)
                    _texts.TryAdd(_subset.IdOf(run.Glyphs[i].Id), text);
            }
        }
    }

    public int IdOf(ushort glyph) => _subset.IdOf(glyph);

    public int AdvanceOf(ushort glyph) => _subset.Original.AdvanceOf(glyph);

    /// <summary>Writes the font's five objects and gives the number of the first (ISO 32000-1, 9.7.4 and 9.9).</summary>
    public int Write(PdfFile file)
    {
        var (name, original) = ($"{SubsetTag()}+{_font.Name}", _subset.Original);
        var (data, texts) = (file.Reserve(), file.Reserve());
        file.WriteStream(data, _subset.ToFile());
        file.WriteStream(texts, Encoding.ASCII.GetBytes(ToUnicode()));
        var descriptor = file.Write($"<< /Type /FontDescriptor /FontName /{name} /Flags 4 /FontBBox [{string.Join(' ', original.Box)}] "
            + $"/ItalicAngle 0 /Ascent {original.Ascent} /Descent {original.Descent} /CapHeight {original.Ascent} /StemV 90 /FontFile2 {data} 0 R >>");
        var font = file.Write($"<< /Type /Font /Subtype /CIDFontType2 /BaseFont /{name} /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> "
            + $"/FontDescriptor {descriptor} 0 R /CIDToGIDMap /Identity /W [0 [{string.Join(' ', _subset.Widths)}]] >>");
        return file.Write($"<< /Type /Font /Subtype /Type0 /BaseFont /{name} /Encoding /Identity-H /DescendantFonts [{font} 0 R] /ToUnicode {texts} 0 R >>");
    }

    // Six letters that differ with the glyphs (9.6.4), made from them so that a reprint is the same file.
    private string SubsetTag()
    {
        var hash = 14695981039346656037UL; // FNV-1a
        foreach (var (id, text) in _texts.OrderBy(pair => pair.Key))
        {
            foreach (var character in $"{id}{text}")
                hash = (hash ^ character) * 1099511628211UL;
        }
        return string.Concat(Enumerable.Range(0, 6).Select(i => (char)('A' + (hash >> 8 * i & 0xFF) % 26)));
    }

    private string ToUnicode()
    {
        var map = new StringBuilder("""
            /CIDInit /ProcSet findresource begin 12 dict begin begincmap
            /CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
            /CMapName /Adobe-Identity-UCS def /CMapType 2 def
            1 begincodespacerange <0000> <FFFF> endcodespacerange

            """);
        foreach (var chunk in _texts.OrderBy(pair => pair.Key).Chunk(100))
        {
            map.Append(CultureInfo.InvariantCulture, $"{chunk.Length} beginbfchar\n");
            foreach (var (id, text) in chunk)
                map.Append(CultureInfo.InvariantCulture, $"<{id:X4}> <{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>\n");
            map.Append("endbfchar\n");
        }
        return map.Append("endcmap CMapName currentdict /CMap defineresource pop end end").ToString();
    }
}
