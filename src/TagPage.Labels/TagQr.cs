using System.Buffers;
using QRCoder;

namespace TagPage.Labels;

/// <summary>
/// The QR symbol (ISO/IEC 18004) of a tag's address. The address is set in upper case, so that it fits the
/// alphanumeric mode; the symbol is of the smallest version that holds it at level M, with the highest level
/// that this version still has room for. A long run of digits is packed tighter still.
/// </summary>
public sealed class TagQr
{
    /// <summary>Light modules that must stand free around the symbol, on each side.</summary>
    public const int QuietZone = 4;

    /// <summary>Longest address that is taken.</summary>
    public const int MaxLength = 200;

    private static readonly SearchValues<char> Alphanumeric =
        SearchValues.Create("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:");

    private readonly QRCodeData _data;

    private TagQr(string text, QRCodeData data, QrLevel level) => (Text, _data, Level) = (text, data, level);

    /// <summary>What the symbol says: the address in upper case.</summary>
    public string Text { get; }

    /// <summary>Version of the symbol, 1 to 40.</summary>
    public int Version => _data.Version;

    /// <summary>Error correction level.</summary>
    public QrLevel Level { get; }

    /// <summary>Modules on each side without the quiet zone: 17 + 4 · version.</summary>
    public int Modules => _data.ModuleMatrix.Count - 2 * QuietZone;

    /// <summary>The symbol for an address such as https://tag.example/t/7K2M9Q4TXAV.</summary>
    /// <exception cref="ArgumentException">
    /// The address is empty, over 200 characters, or holds a character that the alphanumeric mode does not have.
    /// </exception>
    public static TagQr Of(string address)
    {
        ArgumentException.ThrowIfNullOrEmpty(address);
        var text = address.ToUpperInvariant();
        if (!Takes(address))
        {
            throw new ArgumentException(
                $"A tag’s address has at most {MaxLength} characters: letters A to Z, digits and $ % * + - . / :",
                nameof(address));
        }
        var least = Generate(text, QRCodeGenerator.ECCLevel.M);
        return AtVersion(text, least.Version, QrLevel.H, QRCodeGenerator.ECCLevel.H)
            ?? AtVersion(text, least.Version, QrLevel.Q, QRCodeGenerator.ECCLevel.Q)
            ?? new TagQr(text, least, QrLevel.M);
    }

    /// <summary>Whether a text fits: at most 200 characters, all of the alphanumeric mode once in upper case.</summary>
    public static bool Takes(string address) =>
        address.Length is > 0 and <= MaxLength && !address.ToUpperInvariant().AsSpan().ContainsAnyExcept(Alphanumeric);

    /// <summary>The smallest version that holds this many letters at level M.</summary>
    public static int LeastVersion(int length) => Generate(new string('A', length), QRCodeGenerator.ECCLevel.M).Version;

    /// <summary>Whether a module is dark; false all around the symbol.</summary>
    /// <param name="column">0 is the symbol's own left edge.</param>
    /// <param name="row">0 is the symbol's own top edge.</param>
    public bool IsDark(int column, int row) =>
        column >= 0 && row >= 0 && column < Modules && row < Modules
        && _data.ModuleMatrix[row + QuietZone][column + QuietZone];

    /// <summary>Pure black and white, one bit a pixel, quiet zone included.</summary>
    /// <param name="dotsPerModule">Pixels on each side of a module, 1 to 40; four or more are advised for print.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is out of range.</exception>
    public byte[] ToPng(int dotsPerModule)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dotsPerModule, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dotsPerModule, 40);
        // Not disposed: that would empty the symbol's own data, and there is nothing else to free.
        return new PngByteQRCode(_data).GetGraphic(dotsPerModule);
    }

    private static TagQr? AtVersion(string text, int version, QrLevel level, QRCodeGenerator.ECCLevel ecc)
    {
        var data = Generate(text, ecc);
        return data.Version == version ? new TagQr(text, data, level) : null;
    }

    private static QRCodeData Generate(string text, QRCodeGenerator.ECCLevel ecc) =>
        QRCodeGenerator.GenerateQrCode(text, ecc);
}
