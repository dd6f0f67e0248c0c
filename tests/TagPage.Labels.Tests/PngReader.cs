using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace TagPage.Labels.Tests;

/// <summary>Reads the plain black-and-white PNGs that leave here, from the PNG specification (ISO/IEC 15948).</summary>
internal static class PngReader
{
    public static Bitmap Read(byte[] png)
    {
        Assert.Equal<byte>([0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A], png[..8]);
        var chunks = Chunks(png).ToList();
        var header = chunks.Single(chunk => chunk.Name == "IHDR").Data;
        var (width, height) = (BinaryPrimitives.ReadInt32BigEndian(header), BinaryPrimitives.ReadInt32BigEndian(header.AsSpan(4)));
        Assert.Equal<byte>([1, 0, 0, 0, 0], header[8..13]); // one bit, grey, no interlacing
        return new Bitmap(width, height, Pixels(Inflate(chunks), width, height));
    }

    /// <summary>Pixels a metre, across and down, as the pHYs chunk tells them.</summary>
    public static (int Across, int Down) PerMetre(byte[] png)
    {
        var data = Chunks(png).Single(chunk => chunk.Name == "pHYs").Data;
        Assert.Equal(1, data[8]); // the unit is the metre
        return (BinaryPrimitives.ReadInt32BigEndian(data), BinaryPrimitives.ReadInt32BigEndian(data.AsSpan(4)));
    }

    private static IEnumerable<(string Name, byte[] Data)> Chunks(byte[] png)
    {
        for (var at = 8; at < png.Length;)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            yield return (Encoding.ASCII.GetString(png, at + 4, 4), png[(at + 8)..(at + 8 + length)]);
            at += length + 12;
        }
    }

    private static byte[] Inflate(List<(string Name, byte[] Data)> chunks)
    {
        using var packed = new MemoryStream([.. chunks.Where(chunk => chunk.Name == "IDAT").SelectMany(chunk => chunk.Data)]);
        using var zlib = new ZLibStream(packed, CompressionMode.Decompress);
        using var lines = new MemoryStream();
        zlib.CopyTo(lines);
        return lines.ToArray();
    }

    private static byte[] Pixels(byte[] lines, int width, int height)
    {
        var stride = 1 + (width + 7) / 8;
        Assert.Equal(stride * height, lines.Length);
        var gray = new byte[width * height];
        for (var y = 0; y < height; y++)
        {
            var line = lines.AsSpan(y * stride, stride);
            var row = gray.AsSpan(y * width, width);
            Assert.Equal(0, line[0]); // no filter
            for (var x = 0; x < width; x++)
                row[x] = (line[1 + x / 8] >> (7 - x % 8) & 1) == 1 ? (byte)255 : (byte)0;
        }
        return gray;
    }
}
