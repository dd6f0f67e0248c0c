using System.Text;

namespace TagPage.Labels;

/// <summary>A tag's QR as text, to be scanned off a terminal.</summary>
public static class TagQrTerminal
{
    /// <summary>
    /// Lines of half blocks, two rows of modules a line, quiet zone included. Light modules are drawn and dark ones
    /// left out: right on the usual terminal with light letters on a dark ground.
    /// </summary>
    public static string ToTerminal(this TagQr qr)
    {
        var text = new StringBuilder();
        var end = qr.Modules + TagQr.QuietZone;
        for (var row = -TagQr.QuietZone; row < end; row += 2)
        {
            for (var column = -TagQr.QuietZone; column < end; column++)
                text.Append(HalfBlock(!qr.IsDark(column, row), row + 1 < end && !qr.IsDark(column, row + 1)));
            text.Append('\n');
        }
        return text.ToString();
    }

    private static char HalfBlock(bool upper, bool lower) => (upper, lower) switch
    {
        (true, true) => '█',
        (true, false) => '▀',
        (false, true) => '▄',
        _ => ' ',
    };
}
