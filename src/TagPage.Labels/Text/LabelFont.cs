using System.Runtime.InteropServices;
using HarfBuzzSharp;
using SkiaSharp;

namespace TagPage.Labels.Text;

/// <summary>One bundled font, loaded once and never changed; may be used by several threads.</summary>
#pragma warning disable CA1001 // The few bundled fonts live as long as the program does.
public sealed class LabelFont
#pragma warning restore CA1001
{
    private readonly GCHandle _bytes;
    private readonly Blob _blob;
    private readonly Face _face;
    private readonly Font _shaping;

    internal LabelFont(string name)
    {
        Name = name;
        Data = Read(name + ".ttf");
        using var data = SKData.CreateCopy(Data);
        Typeface = SKTypeface.FromData(data);
        _bytes = GCHandle.Alloc(Data, GCHandleType.Pinned);
        _blob = new Blob(_bytes.AddrOfPinnedObject(), Data.Length, MemoryMode.ReadOnly);
        _face = new Face(_blob, 0);
        UnitsPerEm = _face.UnitsPerEm;
        _shaping = new Font(_face);
        _shaping.SetScale(UnitsPerEm, UnitsPerEm);
        _shaping.SetFunctionsOpenType();
    }

    /// <summary>The file's name without its ending.</summary>
    public string Name { get; }

    /// <summary>The font file: TrueType outlines.</summary>
    internal byte[] Data { get; }

    internal SKTypeface Typeface { get; }

    internal int UnitsPerEm { get; }

    internal bool Has(int codePoint) => _shaping.TryGetNominalGlyph((uint)codePoint, out var glyph) && glyph != 0;

    /// <summary>Glyphs in the order they are seen, left to right, in units of this font.</summary>
    internal IReadOnlyList<Glyph> Shape(string text, bool isRightToLeft)
    {
        using var buffer = new HarfBuzzSharp.Buffer();
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        buffer.Direction = isRightToLeft ? HarfBuzzSharp.Direction.RightToLeft : HarfBuzzSharp.Direction.LeftToRight;
        _shaping.Shape(buffer);
        var (infos, positions) = (buffer.GlyphInfos, buffer.GlyphPositions);
        return [.. infos.Select((info, i) => new Glyph(
            (ushort)info.Codepoint, (int)info.Cluster, positions[i].XAdvance, positions[i].XOffset, positions[i].YOffset))];
    }

    private static byte[] Read(string file)
    {
        using var stream = typeof(LabelFont).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"The font {file} is not in the program.");
        var data = new byte[stream.Length];
        stream.ReadExactly(data);
        return data;
    }
}
