using SkiaSharp;
using TagPage.Labels.Content;

namespace TagPage.Labels.Tests.Layout;

public class LogoTests
{
    private static byte[] Picture(int width, int height, SKEncodedImageFormat format = SKEncodedImageFormat.Png)
    {
        using var bitmap = new SKBitmap(width, height);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.Transparent);
        using var paint = new SKPaint { Color = new SKColor(100, 100, 100) };
        canvas.DrawRect(0, 0, width / 2f, height, paint);
        canvas.Flush();
        using var data = bitmap.Encode(format, 90);
        return data.ToArray();
    }

    [Fact]
    public void Picture_is_drawn_anew_on_white_and_made_black_and_white_at_the_threshold()
    {
        var (png, fault) = Logo.Read(Picture(40, 20));
        Assert.Null(fault);
        var picture = Logo.ToPicture(png!, 128);
        Assert.Equal((40, 20), (picture.Width, picture.Height));
        Assert.True(picture.Dark[5 * 40 + 5]);
        Assert.False(picture.Dark[5 * 40 + 35]); // what was transparent is the tape
        Assert.DoesNotContain(true, Logo.ToPicture(png!, 90).Dark);
    }

    [Fact]
    public void Drawing_is_drawn_as_large_as_is_kept_and_made_black_and_white()
    {
        var (png, fault) = Logo.Read(Svg("<path fill='#222' d='M0 0h10v10h-10z'/><rect x='10' width='10' height='10' fill='url(#g)'/>"
            + "<defs><linearGradient id='g'><stop stop-color='#fff'/></linearGradient></defs>"));

        Assert.Null(fault);
        var picture = Logo.ToPicture(png!, 128);
        Assert.Equal((960, 480), (picture.Width, picture.Height));
        Assert.True(picture.Dark[240 * 960 + 240]);
        Assert.False(picture.Dark[240 * 960 + 720]);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("<path onclick='alert(1)' d='M0 0h9v9z'/>")]
    [InlineData("<image href='http://127.0.0.1:9/a.png' width='9' height='9'/>")]
    [InlineData("<use href='http://127.0.0.1:9/a.svg#a'/>")]
    [InlineData("<foreignObject width='9' height='9'/>")]
    [InlineData("<text>our shop</text>")]
    [InlineData("<style>@import url(http://127.0.0.1:9/a.css);</style><path d='M0 0h9v9z'/>")]
    [InlineData("<path fill='url( \"http://127.0.0.1:9/a.svg#g\" )' d='M0 0h9v9z'/>")]
    [InlineData("<path style='fill:u\\72l(file:///etc/hosts)' d='M0 0h9v9z'/>")]
    public void Drawing_that_needs_more_than_its_own_shapes_is_refused(string inside) =>
        Assert.Contains("more than shapes", Logo.Read(Svg(inside)).Fault, StringComparison.Ordinal);

    [Theory]
    [InlineData("<svg")]
    [InlineData("<html/>")]
    [InlineData("<svg/>")]
    [InlineData("<!DOCTYPE svg [<!ENTITY a 'b'>]><svg xmlns='http://www.w3.org/2000/svg'/>")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'/>")]
    public void Markup_that_draws_nothing_is_refused(string markup) =>
        Assert.Contains("cannot be read or shows nothing", Logo.Read(System.Text.Encoding.UTF8.GetBytes(markup)).Fault, StringComparison.Ordinal);

    [Fact]
    public void Remarks_of_a_drawing_program_do_no_harm() =>
        Assert.Null(Logo.Read(Svg("<e:view xmlns:e='urn:editor' e:zoom='2'/><metadata>made by hand</metadata><circle cx='5' cy='5' r='4'/>")).Fault);

    private static byte[] Svg(string inside) =>
        System.Text.Encoding.UTF8.GetBytes($"<?xml version='1.0'?>\n<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 20 10' width='20' height='10'>{inside}</svg>");

    [Fact]
    public void Large_picture_is_kept_small()
    {
        var picture = Logo.ToPicture(Logo.Read(Picture(3000, 1500)).Png!, 128);
        Assert.Equal((960, 480), (picture.Width, picture.Height));
    }

    [Fact]
    public void What_is_no_png_or_too_large_or_broken_is_refused_with_a_sentence()
    {
        Assert.Contains("neither PNG nor SVG", Logo.Read(Picture(40, 20, SKEncodedImageFormat.Jpeg)).Fault, StringComparison.Ordinal);
        Assert.Contains("500 KB", Logo.Read(new byte[600_000]).Fault, StringComparison.Ordinal);
        Assert.Contains("4 × 4", Logo.Read(Picture(4, 4)).Fault, StringComparison.Ordinal);
        Assert.NotNull(Logo.Read([.. Picture(40, 20).Take(20)]).Fault);
        Assert.NotNull(Logo.Read([]).Fault);
    }
}
