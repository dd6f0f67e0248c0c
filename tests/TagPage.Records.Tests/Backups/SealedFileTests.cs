using System.Security.Cryptography;
using System.Text;
using TagPage.Records.Backups;

namespace TagPage.Records.Tests.Backups;

public sealed class SealedFileTests
{
    private const int Piece = SealedFile.PieceBytes, Sealed = Piece + SealedFile.TagBytes;

    private static readonly SealKey Key = SealKey.Of("four grey herons walking", new byte[SealKey.SaltBytes], rounds: 1);

    private static byte[] Seal(byte[] plain)
    {
        using var target = new MemoryStream();
        SealedFile.Seal(new MemoryStream(plain), target, Key);
        return target.ToArray();
    }

    private static byte[]? Open(byte[] file, SealKey? key = null)
    {
        using var target = new MemoryStream();
        return SealedFile.Open(new MemoryStream(file), target, (_, _) => key ?? Key) ? target.ToArray() : null;
    }

    private static byte[] Some(int bytes) => [.. Enumerable.Range(0, bytes).Select(n => (byte)(n * 31 % 251))];

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(Piece - 1)]
    [InlineData(Piece)]
    [InlineData(Piece + 1)]
    [InlineData(3 * Piece)]
    public void What_was_sealed_comes_back(int bytes) => Assert.Equal(Some(bytes), Open(Seal(Some(bytes))));

    [Fact]
    public void Two_sealings_of_one_file_have_nothing_in_common_beyond_the_head()
    {
        var (one, other) = (Seal(Some(1000)), Seal(Some(1000)));

        Assert.NotEqual(one[SealedFile.HeadBytes..], other[SealedFile.HeadBytes..]);
        Assert.Equal(-1, one.AsSpan().IndexOf(Some(1000).AsSpan(0, 16)));
    }

    [Fact]
    public void Other_passphrase_opens_nothing() =>
        Assert.Null(Open(Seal(Some(1000)), SealKey.Of("four grey herons walkinG", new byte[SealKey.SaltBytes], rounds: 1)));

    [Theory]
    [InlineData("cut within a piece")]
    [InlineData("cut after a piece")]
    [InlineData("cut after the head")]
    [InlineData("cut within the head")]
    [InlineData("pieces swapped")]
    [InlineData("a piece twice")]
    [InlineData("a piece missing")]
    [InlineData("a piece of another file")]
    [InlineData("something added")]
    [InlineData("a bit of the head")]
    [InlineData("a bit of a piece")]
    [InlineData("a bit of a tag")]
    [InlineData("rounds without end")]
    public void Whatever_was_done_to_it_is_found(string what)
    {
        var whole = Seal(Some(3 * Piece));
        byte[] head = whole[..SealedFile.HeadBytes], first = At(whole, 0), second = At(whole, 1), third = At(whole, 2);
        var changed = what switch
        {
            "cut within a piece" => whole[..^1000],
            "cut after a piece" => [.. head, .. first, .. second],
            "cut after the head" => head,
            "cut within the head" => head[..30],
            "pieces swapped" => [.. head, .. second, .. first, .. third],
            "a piece twice" => [.. head, .. first, .. first, .. second, .. third],
            "a piece missing" => [.. head, .. first, .. third],
            "a piece of another file" => [.. head, .. At(Seal(Some(3 * Piece)), 0), .. second, .. third],
            "something added" => [.. whole, 0],
            "a bit of the head" => Flip(whole, 25),
            "a bit of a piece" => Flip(whole, SealedFile.HeadBytes + 1000),
            "a bit of a tag" => Flip(whole, whole.Length - 1),
            _ => [.. head[..16], 0x7f, 0xff, 0xff, 0xff, .. whole[20..]],
        };

        Assert.Null(Open(changed));
        Assert.NotNull(Open(whole));
    }

    private static byte[] At(byte[] file, int piece) => file[(SealedFile.HeadBytes + (piece * Sealed))..(SealedFile.HeadBytes + ((piece + 1) * Sealed))];

    private static byte[] Flip(byte[] file, int at) => [.. file[..at], (byte)(file[at] ^ 1), .. file[(at + 1)..]];

    /// <summary>RFC 7914, section 11: PBKDF2-HMAC-SHA-256. The first 32 of its 64 bytes are the first block, and so all of a shorter key.</summary>
    [Theory]
    [InlineData("passwd", "salt", 1, "55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc")]
    [InlineData("Password", "NaCl", 80_000, "4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56")]
    public void Key_of_a_passphrase_is_that_of_the_standard(string passphrase, string salt, int rounds, string key) =>
        Assert.Equal(key, Convert.ToHexStringLower(SealKey.Of(passphrase, Encoding.ASCII.GetBytes(salt), rounds).Stored.AsSpan(salt.Length)));

    /// <summary>RFC 5869, appendix A.1: HKDF-SHA-256.</summary>
    [Fact]
    public void Key_of_a_file_is_derived_as_the_standard_says() => Assert.Equal(
        "3cb25f25faacd57a90434f64d0362f2a2d2d0a90cf1a5a4c5db02d56ecc4c5bf34007208d5b887185865",
        Convert.ToHexStringLower(HKDF.DeriveKey(HashAlgorithmName.SHA256, Convert.FromHexString(string.Concat(Enumerable.Repeat("0b", 22))), 42,
            Convert.FromHexString("000102030405060708090a0b0c"), Convert.FromHexString("f0f1f2f3f4f5f6f7f8f9"))));

    /// <summary>McGrew and Viega, "The Galois/Counter Mode of Operation", appendix B, test case 14: AES-256, sixteen zeros under a key of zeros.</summary>
    [Fact]
    public void Cipher_is_that_of_the_standard()
    {
        using var aes = new AesGcm(new byte[32], SealedFile.TagBytes);
        var (cipher, tag) = (new byte[16], new byte[16]);

        aes.Encrypt(new byte[12], new byte[16], cipher, tag);

        Assert.Equal("cea7403d4d606b6e074ec5d3baf39d18 d0d1c8a799996bf0265b98b5d48ab919", $"{Convert.ToHexStringLower(cipher)} {Convert.ToHexStringLower(tag)}");
    }
}
