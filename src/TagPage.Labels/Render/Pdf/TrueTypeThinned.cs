using System.Buffers.Binary;

namespace TagPage.Labels.Render.Pdf;

/// <summary>
/// A TrueType font (ISO/IEC 14496-22) in which only some glyphs still have an outline. Numbers, widths and characters stay as they
/// were, so that it can stand in for the whole font.
/// </summary>
internal static class TrueTypeThinned
{
    /// <summary>What draws glyphs and names their characters; shaping has been done by then.</summary>
    private static readonly string[] Kept = ["OS/2", "cmap", "cvt ", "fpgm", "hhea", "hmtx", "maxp", "name", "post", "prep"];

    public static byte[] Of(byte[] font, IEnumerable<ushort> glyphs)
    {
        var original = new TrueTypeTables(font);
        var (glyf, loca) = Outlines(original, [.. original.WithComponents(glyphs)]);
        var tables = new SortedDictionary<string, byte[]>(StringComparer.Ordinal) { ["head"] = Head(original), ["loca"] = loca, ["glyf"] = glyf };
        foreach (var name in Kept.Where(original.Has))
            tables[name] = original.Table(name);
        return TrueTypeFile.Of(tables);
    }

    private static (byte[] Glyf, byte[] Loca) Outlines(TrueTypeTables font, HashSet<ushort> glyphs)
    {
        using var glyf = new MemoryStream();
        var loca = new byte[4 * (font.Count + 1)];
        for (var glyph = 0; glyph < font.Count; glyph++)
        {
            if (glyphs.Contains((ushort)glyph))
                glyf.Write(font.OutlineOf((ushort)glyph));
            while (glyf.Length % 4 != 0)
                glyf.WriteByte(0);
            BinaryPrimitives.WriteUInt32BigEndian(loca.AsSpan(4 * (glyph + 1)), (uint)glyf.Length);
        }
        return (glyf.ToArray(), loca);
    }

    /// <summary>Its checksum is put in with the others; places of outlines are given in four bytes.</summary>
    private static byte[] Head(TrueTypeTables font)
    {
        var head = font.Table("head");
        BinaryPrimitives.WriteUInt32BigEndian(head.AsSpan(8), 0);
        BinaryPrimitives.WriteUInt16BigEndian(head.AsSpan(50), 1);
        return head;
    }
}
