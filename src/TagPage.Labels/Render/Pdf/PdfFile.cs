using System.IO.Compression;
using System.Text;

namespace TagPage.Labels.Render.Pdf;

/// <summary>
/// Writes the objects of a PDF 1.7 file (ISO 32000-1) and their table. No clock and no randomness: the same labels give
/// the same bytes.
/// </summary>
internal sealed class PdfFile : IDisposable
{
    private readonly MemoryStream _file = new();
    private readonly List<long> _places = [];

    // A comment of bytes over 127 tells programs that the file is not text (7.5.2).
    public PdfFile() => _file.Write([.. "%PDF-1.7\n%"u8, 0xE2, 0xE3, 0xCF, 0xD3, (byte)'\n']);

    /// <summary>Takes a number for an object that is written later.</summary>
    public int Reserve()
    {
        _places.Add(0);
        return _places.Count;
    }

    public void Write(int id, string body)
    {
        Begin(id);
        Text($"{body}\nendobj\n");
    }

    public int Write(string body)
    {
        var id = Reserve();
        Write(id, body);
        return id;
    }

    /// <summary>A compressed stream.</summary>
    /// <param name="id">Its number.</param>
    /// <param name="data">What it holds.</param>
    /// <param name="entries">More entries of its dictionary.</param>
    public void WriteStream(int id, byte[] data, string entries = "")
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
            zlib.Write(data);
        Begin(id);
        Text($"<< /Length {packed.Length} /Filter /FlateDecode {entries} >>\nstream\n");
        packed.Position = 0;
        packed.CopyTo(_file);
        Text("\nendstream\nendobj\n");
    }

    public byte[] Finish(int catalog, int info)
    {
        var table = _file.Position;
        Text($"xref\n0 {_places.Count + 1}\n0000000000 65535 f \n");
        foreach (var place in _places)
            Text($"{place:0000000000} 00000 n \n");
        Text($"trailer\n<< /Size {_places.Count + 1} /Root {catalog} 0 R /Info {info} 0 R >>\nstartxref\n{table}\n%%EOF\n");
        return _file.ToArray();
    }

    public void Dispose() => _file.Dispose();

    private void Begin(int id)
    {
        _places[id - 1] = _file.Position;
        Text($"{id} 0 obj\n");
    }

    private void Text(string text) => _file.Write(Encoding.ASCII.GetBytes(text));
}
