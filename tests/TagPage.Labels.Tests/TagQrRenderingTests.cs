using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace TagPage.Labels.Tests;

public partial class TagQrRenderingTests
{
    private static readonly TagQr Qr = TagQr.Of("https://tag.example/t/7K2M9Q4TXAV");

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(40)]
    public void A_png_has_a_quiet_zone_of_four_light_modules_on_every_side(int dots)
    {
        // ISO/IEC 18004: quiet zone 4 modules, 25 modules a side for version 2.
        var bitmap = PngReader.Read(Qr.ToPng(dots));
        Assert.Equal((33 * dots, 33 * dots), (bitmap.Width, bitmap.Height));
        Assert.Equal<byte>(Bitmap.Of(33, dots, (x, y) => Qr.IsDark(x - 4, y - 4)).Gray.AsSpan(), bitmap.Gray.AsSpan());
        Assert.True(Qr.IsDark(0, 0) && Qr.IsDark(24, 0) && Qr.IsDark(0, 24)); // corners of the finder patterns
        Assert.False(Qr.IsDark(-1, 0) || Qr.IsDark(25, 0) || Qr.IsDark(0, 25));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(41)]
    public void A_png_of_no_or_of_endless_dots_is_refused(int dots) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Qr.ToPng(dots));

    [Fact]
    public void An_svg_is_read_back_from_its_own_path()
    {
        var svg = XDocument.Parse(Qr.ToSvg("QR of this racket’s page")).Root!;
        Assert.Equal("0 0 33 33", (string?)svg.Attribute("viewBox"));
        Assert.Equal("crispEdges", (string?)svg.Attribute("shape-rendering"));
        var dark = new HashSet<(int, int)>();
        var path = (string)svg.Elements().Last().Attribute("d")!;
        foreach (Match run in Run().Matches(path))
        {
            for (var x = 0; x < Number(run, 3); x++)
                dark.Add((Number(run, 1) + x, Number(run, 2)));
        }
        Assert.Equal("", Run().Replace(path, ""));
        Assert.Equal((Qr.Text, "M"), Scanner.Scan(Bitmap.Of(33, 3, (x, y) => dark.Contains((x, y)))));
    }

    [Fact]
    public void An_svg_has_a_title_for_people_who_cannot_see_it_and_markup_in_it_stays_text()
    {
        var svg = XDocument.Parse(Qr.ToSvg("QR of <b>\"A & B\"</b>")).Root!;
        Assert.Equal("img", (string?)svg.Attribute("role"));
        var title = svg.Elements().First();
        Assert.Equal(("title", "QR of <b>\"A & B\"</b>"), (title.Name.LocalName, title.Value));
        Assert.Empty(title.Elements());
    }

    [Fact]
    public void A_terminal_shows_it_light_on_dark()
    {
        var lines = Qr.ToTerminal().TrimEnd('\n').Split('\n');
        Assert.Equal(17, lines.Length);
        Assert.All(lines, line => Assert.Equal(33, line.Length));
        bool IsLit(int x, int y) => lines[y / 2][x] is '█' || lines[y / 2][x] == (y % 2 == 0 ? '▀' : '▄');
        Assert.Equal((Qr.Text, "M"), Scanner.Scan(Bitmap.Of(33, 3, (x, y) => !IsLit(x, y))));
    }

    private static int Number(Match match, int group) =>
        int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"M(\d+) (\d+)h(\d+)v1h-\3z")]
    private static partial Regex Run();
}
