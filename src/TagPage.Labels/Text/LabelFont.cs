using System.Collections.Concurrent;
using System.Runtime.InteropServices;
using HarfBuzzSharp;
using SkiaSharp;

namespace TagPage.Labels.Text;

/// <summary>One bundled font, loaded once and never changed; may be used by several threads.</summary>
#pragma warning disable CA1001 // The few bundled fonts live as long as the program does.
public sealed class LabelFont
#pragma warning restore CA1001
{
    // A stem of the plain weight is 0.08 of the size: from here on it is two dots wide once it is fitted to them.
    private const int SmallestWithTwoDots = 19;

    private readonly GCHandle _bytes;
    private readonly Blob _blob;
    private readonly Face _face;
    private readonly Font _shaping;
    private readonly ConcurrentDictionary<(ushort Glyph, int Size), (int Width, int Up, int Down)> _fits = [];

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

    /// <summary>Whether its letters are fitted to the printer's dots; letters that join each other are not.</summary>
    internal bool IsFitted { get; init; }

    /// <summary>The same letters, stronger: for type so small that a stem of this font would be a single dot.</summary>
    internal LabelFont? Sturdy { get; init; }

    /// <summary>The font file: TrueType outlines.</summary>
    internal byte[] Data { get; }

    internal SKTypeface Typeface { get; }

    internal int UnitsPerEm { get; }

    /// <summary>This font or its sturdy one. Both number their glyphs alike.</summary>
    internal LabelFont ForSize(int size) => size < SmallestWithTwoDots && Sturdy is { } sturdy ? sturdy : this;

    internal bool Has(int codePoint) => _shaping.TryGetNominalGlyph((uint)codePoint, out var glyph) && glyph != 0;

    /// <summary>Glyphs in the order they are seen, left to right, in units of this font.</summary>
    public IReadOnlyList<Glyph> Shape(string text, bool isRightToLeft)
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

    /// <summary>How far the ink of a glyph reaches up and down from the line it stands on, in whole dots.</summary>
    internal (int Up, int Down) Ink(Glyph glyph, int size)
    {
        if (IsFitted && glyph.OffsetY == 0)
            return (Fit(glyph.Id, size).Up, Fit(glyph.Id, size).Down);
        if (!_shaping.TryGetGlyphExtents(glyph.Id, out var box))
            return (0, 0);
        var (dots, top) = ((double)size / UnitsPerEm, box.YBearing + glyph.OffsetY);
        return ((int)Math.Ceiling(top * dots), (int)Math.Ceiling(-(top + box.Height) * dots));
    }

    /// <summary>
    /// How far the pen moves after a glyph, in dots. Of a fitted font in whole dots, as wide as the letter was drawn into
    /// the dots, so that no two letters run together and words keep apart.
    /// </summary>
    internal double Step(Glyph glyph, int size)
    {
        if (!IsFitted)
            return (double)glyph.Advance * size / UnitsPerEm;
        var kerning = glyph.Advance - _shaping.GetHorizontalGlyphAdvance(glyph.Id);
        return Fit(glyph.Id, size).Width + Math.Round((double)kerning * size / UnitsPerEm);
    }

    /// <summary>The font at a size, its letters fitted to the dots.</summary>
    internal SKFont At(int size) => new(Typeface, size)
    {
        Edging = SKFontEdging.Alias,
        Hinting = SKFontHinting.Normal,
        ForceAutoHinting = IsFitted,
    };

    private (int Width, int Up, int Down) Fit(ushort glyph, int size) => _fits.GetOrAdd((glyph, size), key =>
    {
        using var font = At(key.Size);
        var boxes = new SKRect[1];
        var advances = new float[1];
        font.GetGlyphWidths([key.Glyph], advances, boxes);
        var width = (int)Math.Round(advances[0], MidpointRounding.AwayFromZero);
        return (IsBlank(key.Glyph) ? Math.Max(width, (int)Math.Ceiling(key.Size / 4.0)) : width, (int)Math.Ceiling(-boxes[0].Top), (int)Math.Ceiling(boxes[0].Bottom));
    });

    private bool IsBlank(ushort glyph) => _shaping.TryGetNominalGlyph(' ', out var blank) && blank == glyph;

    private static byte[] Read(string file)
    {
        using var stream = typeof(LabelFont).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"The font {file} is not in the program.");
        var data = new byte[stream.Length];
        stream.ReadExactly(data);
        return data;
    }
}
