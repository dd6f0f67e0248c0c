using System.Buffers.Binary;

namespace TagPage.Records.Storage;

/// <summary>What the first 100 bytes of a file say (https://www.sqlite.org/fileformat.html), read before SQLite runs anything of it.</summary>
/// <param name="IsSqlite">It begins as every database does.</param>
/// <param name="IsOurs">This program made it.</param>
/// <param name="IsCopy">Nobody started from it yet.</param>
/// <param name="PageBytes">Bytes of a page.</param>
/// <param name="Pages">How many there have to be.</param>
internal sealed record FileHead(bool IsSqlite, bool IsOurs, bool IsCopy, int PageBytes, long Pages)
{
    private const int Length = 100;

    public static FileHead Read(string file)
    {
        var head = new byte[Length];
        using var stream = File.OpenRead(file);
        var isWhole = stream.ReadAtLeast(head, Length, throwOnEndOfStream: false) == Length;
        return new(
            isWhole && head.AsSpan().StartsWith("SQLite format 3\0"u8),
            BinaryPrimitives.ReadInt32BigEndian(head.AsSpan(68)) == RecordsFile.ApplicationId,
            BinaryPrimitives.ReadInt32BigEndian(head.AsSpan(60)) == RecordsFile.Copy,
            BinaryPrimitives.ReadUInt16BigEndian(head.AsSpan(16)),
            BinaryPrimitives.ReadUInt32BigEndian(head.AsSpan(28)));
    }
}
