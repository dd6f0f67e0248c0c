using System.Buffers.Binary;
using System.Security.Cryptography;

namespace TagPage.Records.Backups;

/// <summary>
/// A file sealed with AES-256-GCM in pieces of 64 KiB. Each piece's nonce is its number and whether it is the last, so that pieces that
/// were swapped, taken out, doubled or cut off are refused; the head is bound into every piece. docs/trust.md has the layout.
/// </summary>
public static class SealedFile
{
    public const int PieceBytes = 64 * 1024;

    internal const int TagBytes = 16, NonceBytes = 12, HeadBytes = 16 + 4 + SealKey.SaltBytes + FileSaltBytes;

    private const int FileSaltBytes = 32;

    /// <summary>More would let a file that anybody made keep the machine busy.</summary>
    private const int MostRounds = 10_000_000;

    private static ReadOnlySpan<byte> Magic => "TagPage sealed 1"u8;

    public static bool IsSealed(string file)
    {
        var start = new byte[Magic.Length];
        using var stream = File.OpenRead(file);
        return stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false) == start.Length && start.AsSpan().SequenceEqual(Magic);
    }

    public static void Seal(Stream plain, Stream target, SealKey key)
    {
        var head = new byte[HeadBytes];
        Magic.CopyTo(head);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(16), SealKey.Rounds);
        key.Salt.CopyTo(head, 20);
        RandomNumberGenerator.Fill(head.AsSpan(HeadBytes - FileSaltBytes));
        target.Write(head);
        using var aes = new AesGcm(key.ForFile(head[^FileSaltBytes..]), TagBytes);
        byte[] piece = new byte[PieceBytes], next = new byte[PieceBytes];
        var filled = plain.ReadAtLeast(piece, PieceBytes, throwOnEndOfStream: false);
        for (long number = 0; ; number++)
        {
            var following = filled == PieceBytes ? plain.ReadAtLeast(next, PieceBytes, throwOnEndOfStream: false) : 0;
            var (cipher, tag) = (new byte[filled], new byte[TagBytes]);
            aes.Encrypt(Nonce(number, isLast: following == 0), piece.AsSpan(0, filled), cipher, tag, head);
            target.Write(cipher);
            target.Write(tag);
            if (following == 0)
                return;
            (piece, next, filled) = (next, piece, following);
        }
    }

    /// <summary>Writes what was sealed, piece by piece; where it returns false, what was written is worth nothing.</summary>
    /// <returns>False for another passphrase, or a file that was changed or cut.</returns>
    public static bool Open(Stream source, Stream target, Func<byte[], int, SealKey> keyOf)
    {
        var head = new byte[HeadBytes];
        if (source.ReadAtLeast(head, HeadBytes, throwOnEndOfStream: false) < HeadBytes || !head.AsSpan().StartsWith(Magic))
            return false;
        var rounds = BinaryPrimitives.ReadInt32BigEndian(head.AsSpan(16));
        if (rounds is < 1 or > MostRounds)
            return false;
        using var aes = new AesGcm(keyOf(head[20..(20 + SealKey.SaltBytes)], rounds).ForFile(head[^FileSaltBytes..]), TagBytes);
        byte[] piece = new byte[PieceBytes + TagBytes], next = new byte[PieceBytes + TagBytes];
        var filled = source.ReadAtLeast(piece, piece.Length, throwOnEndOfStream: false);
        for (long number = 0; ; number++)
        {
            var following = filled == piece.Length ? source.ReadAtLeast(next, next.Length, throwOnEndOfStream: false) : 0;
            if (filled < TagBytes || !Decrypt(aes, Nonce(number, isLast: following == 0), piece.AsSpan(0, filled), head, target))
                return false;
            if (following == 0)
                return true;
            (piece, next, filled) = (next, piece, following);
        }
    }

    private static bool Decrypt(AesGcm aes, byte[] nonce, ReadOnlySpan<byte> piece, byte[] head, Stream target)
    {
        var plain = new byte[piece.Length - TagBytes];
        try
        {
            aes.Decrypt(nonce, piece[..^TagBytes], piece[^TagBytes..], plain, head);
        }
        catch (AuthenticationTagMismatchException)
        {
            return false;
        }
        target.Write(plain);
        return true;
    }

    private static byte[] Nonce(long number, bool isLast)
    {
        var nonce = new byte[NonceBytes];
        BinaryPrimitives.WriteInt64BigEndian(nonce.AsSpan(3), number);
        nonce[^1] = isLast ? (byte)1 : (byte)0;
        return nonce;
    }
}
