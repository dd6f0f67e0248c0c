using TagPage.Web.Start;
using ZXing;

namespace TagPage.Web.Tests.Cli;

/// <summary>Decoded by ZXing.Net, which did not draw it.</summary>
public sealed class TerminalQrTests
{
    private const string Address = "http://192.168.1.7:5080/t/0MWF2SBY7KE";

    [Fact]
    public void Printed_square_reads_as_the_tag_pages_address()
    {
        var lines = Announcement.Qr(Address, colours: false).Split('\n');
        var (width, height) = (lines[0].Length * 4, lines.Length * 8);
        var pixels = new byte[width * height];
        for (var y = 0; y < height; y++)
            for (var x = 0; x < width; x++)
                pixels[y * width + x] = IsLight(lines[y / 8][x / 4], upper: y % 8 < 4) ? byte.MaxValue : (byte)0;

        var reader = new BarcodeReaderGeneric { Options = new() { PossibleFormats = [BarcodeFormat.QR_CODE], TryHarder = true } };
        var read = reader.Decode(new RGBLuminanceSource(pixels, width, height, RGBLuminanceSource.BitmapFormat.Gray8));

        Assert.Equal(Address.ToUpperInvariant(), read?.Text);
    }

    [Fact]
    public void Colours_are_set_on_each_line_so_that_a_light_terminal_shows_the_same() =>
        Assert.All(Announcement.Qr(Address, colours: true).Split('\n'), l => Assert.Matches(@"^\e\[97;40m[█▀▄ ]+\e\[0m$", l));

    [Fact]
    public void Address_that_a_tag_cannot_carry_has_no_square() => Assert.Empty(Announcement.Qr("http://[fd00::1]:5080/t/0MWF2SBY7KE", colours: false));

    private static bool IsLight(char block, bool upper) => block == '█' || block == (upper ? '▀' : '▄');
}
