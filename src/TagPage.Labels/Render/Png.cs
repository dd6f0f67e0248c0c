using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace TagPage.Labels.Render;

/// <summary>PNG (ISO/IEC 15948) of one bit a pixel, which says how large it is meant to be printed.</summary>
public static class Png
{
    private const double InchesPerMetre = 1 / 0.0254;

    /// <summary>The dots as a file; its pHYs chunk carries the resolution.</summary>
    public static byte[] Of(Dots dots, int dpi)
    {
        using var file = new MemoryStream();
        file.Write([0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A]);
        var perMetre = (int)Math.Round(dpi * InchesPerMetre);
        Chunk(file, "IHDR", [.. Bytes(dots.Width), .. Bytes(dots.Height), 1, 0, 0, 0, 0]);
        Chunk(file, "pHYs", [.. Bytes(perMetre), .. Bytes(perMetre), 1]);
        Chunk(file, "IDAT", Packed(dots));
        Chunk(file, "IEND", []);
        return file.ToArray();
    }

    private static byte[] Packed(Dots dots)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal))
        {
            var line = new byte[1 + (dots.Width + 7) / 8];
            for (var y = 0; y < dots.Height; y++)
            {
                Array.Clear(line);
                for (var x = 0; x < dots.Width; x++)
                    line[1 + x / 8] |= (byte)(dots[x, y] ? 0 : 0x80 >> x % 8);
                zlib.Write(line);
            }
        }
        return packed.ToArray();
    }

    private static void Chunk(MemoryStream file, string name, byte[] data)
    {
        byte[] body = [.. Encoding.ASCII.GetBytes(name), .. data];
        file.Write(Bytes(data.Length));
        file.Write(body);
        file.Write(Bytes(Crc(body)));
    }

    // CRC-32 as PNG asks for it (ISO/IEC 15948, annex D).
    private static int Crc(byte[] data)
    {
        var crc = 0xFFFFFFFF;
        foreach (var value in data)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) == 1 ? crc >> 1 ^ 0xEDB88320 : crc >> 1;
        }
        return (int)~crc;
    }

    private static byte[] Bytes(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        return bytes;
    }
}
