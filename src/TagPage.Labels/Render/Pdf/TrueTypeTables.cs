using System.Buffers.Binary;
using System.Text;

namespace TagPage.Labels.Render.Pdf;

/// <summary>Reads the tables of a TrueType font (ISO/IEC 14496-22).</summary>
internal sealed class TrueTypeTables
{
    private readonly byte[] _data;
    private readonly Dictionary<string, (int At, int Length)> _tables = [];
    private readonly int _metrics;
    private readonly bool _hasLongPlaces;

    public TrueTypeTables(byte[] data)
    {
        _data = data;
        for (var i = 0; i < Get16(4); i++)
        {
            var entry = 12 + 16 * i;
            _tables[Encoding.ASCII.GetString(data, entry, 4)] = (Get32(entry + 8), Get32(entry + 12));
        }
        Count = Get16(_tables["maxp"].At + 4);
        UnitsPerEm = Get16(_tables["head"].At + 18);
        _hasLongPlaces = Get16(_tables["head"].At + 50) == 1;
        _metrics = Get16(_tables["hhea"].At + 34);
    }

    /// <summary>How many glyphs it has.</summary>
    public int Count { get; }

    public int UnitsPerEm { get; }

    /// <summary>Of the box around all glyphs: left, bottom, right, top, in thousandths of the size.</summary>
    public IReadOnlyList<int> Box => [.. Enumerable.Range(0, 4).Select(i => Thousandths(Get16Signed(_tables["head"].At + 36 + 2 * i)))];

    public int Ascent => Thousandths(Get16Signed(_tables["hhea"].At + 4));

    public int Descent => Thousandths(Get16Signed(_tables["hhea"].At + 6));

    public bool Has(string name) => _tables.ContainsKey(name);

    public byte[] Table(string name) => _data.AsSpan(_tables[name].At, _tables[name].Length).ToArray();

    public int AdvanceOf(ushort glyph) => Get16(_tables["hmtx"].At + 4 * Math.Min(glyph, _metrics - 1));

    /// <summary>Advance and left side bearing, as they stand in the table.</summary>
    public byte[] MetricsOf(ushort glyph)
    {
        var at = _tables["hmtx"].At;
        var bearing = glyph < _metrics ? at + 4 * glyph + 2 : at + 4 * _metrics + 2 * (glyph - _metrics);
        return [.. _data.AsSpan(at + 4 * Math.Min(glyph, _metrics - 1), 2), .. _data.AsSpan(bearing, 2)];
    }

    public ReadOnlySpan<byte> OutlineOf(ushort glyph)
    {
        var (from, to) = (Place(glyph), Place(glyph + 1));
        return _data.AsSpan(_tables["glyf"].At + from, to - from);
    }

    /// <summary>The glyph for what is missing, those asked for in their order, and after them what these are put together from.</summary>
    public List<ushort> WithComponents(IEnumerable<ushort> glyphs)
    {
        List<ushort> all = [0, .. glyphs.Where(glyph => glyph != 0).Distinct()];
        for (var i = 0; i < all.Count; i++)
            all.AddRange(ComponentsOf(all[i]).Where(part => !all.Contains(part)).Distinct().ToList());
        return all;
    }

    /// <summary>The glyphs that a glyph is put together from.</summary>
    private IEnumerable<ushort> ComponentsOf(ushort glyph)
    {
        var outline = OutlineOf(glyph).ToArray();
        return ComponentPlaces(outline).Select(at => BinaryPrimitives.ReadUInt16BigEndian(outline.AsSpan(at)));
    }

    /// <summary>Where in an outline the numbers of its components stand.</summary>
    public static List<int> ComponentPlaces(byte[] outline)
    {
        const int WordArguments = 1, HasScale = 8, More = 0x20, HasTwoScales = 0x40, HasMatrix = 0x80;
        var places = new List<int>();
        if (outline.Length < 10 || BinaryPrimitives.ReadInt16BigEndian(outline) >= 0)
            return places;
        for (int at = 10, flags = More; (flags & More) != 0;)
        {
            flags = BinaryPrimitives.ReadUInt16BigEndian(outline.AsSpan(at));
            places.Add(at + 2);
            at += 4 + ((flags & WordArguments) != 0 ? 4 : 2);
            at += (flags & HasScale) != 0 ? 2 : (flags & HasTwoScales) != 0 ? 4 : (flags & HasMatrix) != 0 ? 8 : 0;
        }
        return places;
    }

    private int Place(int glyph) => _hasLongPlaces
        ? Get32(_tables["loca"].At + 4 * glyph)
        : 2 * Get16(_tables["loca"].At + 2 * glyph);

    private int Thousandths(int units) => (int)Math.Round(units * 1000.0 / UnitsPerEm);

    private int Get16(int at) => BinaryPrimitives.ReadUInt16BigEndian(_data.AsSpan(at));

    private int Get16Signed(int at) => BinaryPrimitives.ReadInt16BigEndian(_data.AsSpan(at));

    private int Get32(int at) => BinaryPrimitives.ReadInt32BigEndian(_data.AsSpan(at));
}
