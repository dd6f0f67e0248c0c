using TagPage.Core.Tags;

namespace TagPage.Labels.Geometry;

/// <summary>What the shop's own address costs in modules, counted in characters.</summary>
/// <param name="Length">Characters in the square, code included.</param>
/// <param name="Version">Version of the square's symbol.</param>
/// <param name="Level">Its error correction level.</param>
/// <param name="Spare">Characters that the address could be longer without a larger symbol.</param>
/// <param name="FewerForSmaller">Characters fewer that make a smaller symbol, so larger modules; null where no https address can.</param>
public sealed record AddressPrice(int Length, int Version, QrLevel Level, int Spare, int? FewerForSmaller)
{
    // No address of a tag is shorter than this: the scheme, one letter, a dot, a letter, and the code.
    private static readonly int Shortest = "HTTPS://A.B/T/".Length + TagCode.Length;

    /// <summary>The price of an address such as https://tag.example, or null where no square can hold it.</summary>
    public static AddressPrice? Of(string baseAddress)
    {
        var length = baseAddress.Length + "/T/".Length + TagCode.Length;
        if (length > TagQr.MaxLength || !TagQr.Takes(baseAddress))
            return null;
        var qr = TagQr.Of(new string('A', length));
        return new AddressPrice(length, qr.Version, qr.Level, RoomLeft(length, qr.Version), Fewer(length, qr.Version));
    }

    private static int RoomLeft(int length, int version)
    {
        var longer = length;
        while (longer < TagQr.MaxLength && TagQr.LeastVersion(longer + 1) == version)
            longer++;
        return longer - length;
    }

    private static int? Fewer(int length, int version)
    {
        for (var shorter = length - 1; shorter >= Shortest; shorter--)
        {
            if (TagQr.LeastVersion(shorter) < version)
                return length - shorter;
        }
        return null;
    }
}
