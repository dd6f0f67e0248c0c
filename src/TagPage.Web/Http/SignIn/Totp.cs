using System.Buffers.Binary;
using System.Security.Cryptography;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// Codes of authenticator apps: HMAC-SHA-1 over the number of half minutes since 1970 (RFC 6238), cut to digits as RFC 4226, 5.3, says.
/// SHA-1, six digits and 30 seconds are what every app knows.
/// </summary>
public static class Totp
{
    public const int Digits = 6;

    private const int Seconds = 30;

    private const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

    /// <summary>Which half minute it is.</summary>
    public static long StepAt(DateTimeOffset at) => at.ToUnixTimeSeconds() / Seconds;

    /// <param name="key">What app and program share.</param>
    /// <param name="step">See <see cref="StepAt"/>.</param>
    /// <param name="digits">Of the code, leading zeros included; 8 at most.</param>
    public static string Code(ReadOnlySpan<byte> key, long step, int digits = Digits)
    {
        Span<byte> counter = stackalloc byte[sizeof(long)];
        BinaryPrimitives.WriteInt64BigEndian(counter, step);
#pragma warning disable CA5350 // The apps know nothing else, and HMAC does not rest on what SHA-1 lost.
        var mac = HMACSHA1.HashData(key, counter);
#pragma warning restore CA5350
        var cut = BinaryPrimitives.ReadInt32BigEndian(mac.AsSpan(mac[^1] & 0xF)) & int.MaxValue;
        return (cut % (int)Math.Pow(10, digits)).ToString("D" + digits, System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>A key as it is written for people and apps: base 32 of RFC 4648, without padding.</summary>
    /// <exception cref="FormatException">It holds other letters.</exception>
    public static byte[] KeyOf(string written)
    {
        var key = new byte[written.Length * 5 / 8];
        var (bits, held, at) = (0, 0, 0);
        foreach (var letter in written)
        {
            var value = Letters.IndexOf(letter, StringComparison.Ordinal);
            if (value < 0)
                throw new FormatException("Not a letter of base 32.");
            bits = bits << 5 & 0xFFF | value;
            if ((held += 5) >= 8)
                key[at++] = (byte)(bits >> (held -= 8));
        }
        return key;
    }
}
