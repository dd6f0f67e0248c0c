using System.Buffers.Binary;

namespace TagPage.Labels.Render.Pdf;

/// <summary>
/// A TrueType font (ISO/IEC 14496-22) cut down to some glyphs, which get new numbers in the order they were asked for.
/// Holds what a PDF needs of it and nothing else: no cmap, no names.
/// </summary>
internal sealed class TrueTypeSubset
{
    private readonly TrueTypeTables _font;
    private readonly List<ushort> _glyphs;
    private readonly Dictionary<ushort, int> _newIds;

    public TrueTypeSubset(byte[] font, IEnumerable<ushort> glyphs)
    {
        _font = new TrueTypeTables(font);
        _glyphs = _font.WithComponents(glyphs);
        _newIds = _glyphs.Select((glyph, i) => (glyph, i)).ToDictionary(pair => pair.glyph, pair => pair.i);
    }

    public int Count => _glyphs.Count;

    public int IdOf(ushort glyph) => _newIds[glyph];

    /// <summary>Widths by new number, in thousandths of the type's size.</summary>
    public IEnumerable<int> Widths => _glyphs.Select(glyph => (int)Math.Round(_font.AdvanceOf(glyph) * 1000.0 / _font.UnitsPerEm));

    public TrueTypeTables Original => _font;

    public byte[] ToFile()
    {
        var (glyf, loca) = Outlines();
        var tables = new SortedDictionary<string, byte[]>(StringComparer.Ordinal)
        {
            ["head"] = With(_font.Table("head"), (8, 0), (10, 0), (50, 1)),
            ["hhea"] = With(_font.Table("hhea"), (34, (ushort)Count)),
            ["maxp"] = With(_font.Table("maxp"), (4, (ushort)Count)),
            ["hmtx"] = [.. _glyphs.SelectMany(_font.MetricsOf)],
            ["loca"] = loca,
            ["glyf"] = glyf,
        };
        foreach (var name in (string[])["cvt ", "fpgm", "prep"])
        {
            if (_font.Has(name))
                tables[name] = _font.Table(name);
        }
        return TrueTypeFile.Of(tables);
    }

    private (byte[] Glyf, byte[] Loca) Outlines()
    {
        using var glyf = new MemoryStream();
        var loca = new byte[4 * (Count + 1)];
        for (var i = 0; i < Count; i++)
        {
            var outline = _font.OutlineOf(_glyphs[i]).ToArray();
            foreach (var at in TrueTypeTables.ComponentPlaces(outline))
                BinaryPrimitives.WriteUInt16BigEndian(outline.AsSpan(at), (ushort)_newIds[BinaryPrimitives.ReadUInt16BigEndian(outline.AsSpan(at))]);
            glyf.Write(outline);
            while (glyf.Length % 4 != 0)
                glyf.WriteByte(0);
            BinaryPrimitives.WriteUInt32BigEndian(loca.AsSpan(4 * (i + 1)), (uint)glyf.Length);
        }
        return (glyf.ToArray(), loca);
    }

    private static byte[] With(byte[] table, params (int At, ushort Value)[] changes)
    {
        byte[] copy = [.. table];
        foreach (var (at, value) in changes)
            BinaryPrimitives.WriteUInt16BigEndian(copy.AsSpan(at), value);
        return copy;
    }
}
