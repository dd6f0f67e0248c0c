using TagPage.Labels;

namespace TagPage.Web.Start;

/// <summary>The lines that a started program prints.</summary>
public static class Announcement
{
    public static string Line(string label, string text) => $"{label,-10} {text}";

    /// <summary>
    /// The QR of a tag page's address. With colours it is white on black whatever the terminal's own are, so that it scans
    /// off a light one too. Empty for an address that a tag cannot carry.
    /// </summary>
    public static string Qr(string address, bool colours)
    {
        if (address.Contains('[', StringComparison.Ordinal))
            return "";
        var lines = TagQr.Of(address).ToTerminal().TrimEnd('\n').Split('\n');
        return string.Join('\n', colours ? lines.Select(l => $"\e[97;40m{l}\e[0m") : lines);
    }
}
