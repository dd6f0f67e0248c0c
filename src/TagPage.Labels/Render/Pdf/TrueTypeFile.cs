using System.Buffers.Binary;
using System.Text;

namespace TagPage.Labels.Render.Pdf;

/// <summary>Writes tables as a font file, with their checksums.</summary>
internal static class TrueTypeFile
{
    public static byte[] Of(SortedDictionary<string, byte[]> tables)
    {
        var head = 12 + 16 * tables.Count;
        var file = new byte[head + tables.Values.Sum(table => Padded(table.Length))];
        var (log, at, i) = ((int)Math.Log2(tables.Count), head, 0);
        BinaryPrimitives.WriteUInt32BigEndian(file, 0x00010000);
        Put16(file, 4, tables.Count);
        Put16(file, 6, 16 << log);
        Put16(file, 8, log);
        Put16(file, 10, 16 * tables.Count - (16 << log));
        foreach (var (name, table) in tables)
        {
            table.CopyTo(file.AsSpan(at));
            var entry = file.AsSpan(12 + 16 * i++);
            Encoding.ASCII.GetBytes(name, entry);
            BinaryPrimitives.WriteUInt32BigEndian(entry[4..], Sum(file.AsSpan(at, Padded(table.Length))));
            BinaryPrimitives.WriteInt32BigEndian(entry[8..], at);
            BinaryPrimitives.WriteInt32BigEndian(entry[12..], table.Length);
            at += Padded(table.Length);
        }
        Adjust(file, tables.Count);
        return file;
    }

    private static void Adjust(byte[] file, int count)
    {
        for (var i = 0; i < count; i++)
        {
            var entry = file.AsSpan(12 + 16 * i);
            if (entry[..4].SequenceEqual("head"u8))
                BinaryPrimitives.WriteUInt32BigEndian(file.AsSpan(BinaryPrimitives.ReadInt32BigEndian(entry[8..]) + 8), 0xB1B0AFBA - Sum(file));
        }
    }

    private static uint Sum(ReadOnlySpan<byte> data)
    {
        uint sum = 0;
        for (var i = 0; i < data.Length; i += 4)
            sum += BinaryPrimitives.ReadUInt32BigEndian(data[i..]);
        return sum;
    }

    private static int Padded(int length) => (length + 3) / 4 * 4;

    private static void Put16(byte[] file, int at, int value) => BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(at), (ushort)value);
}
