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
    public void Large_picture_is_kept_small()
    {
        var picture = Logo.ToPicture(Logo.Read(Picture(3000, 1500)).Png!, 128);
        Assert.Equal((960, 480), (picture.Width, picture.Height));
    }

    [Fact]
    public void What_is_no_png_or_too_large_or_broken_is_refused_with_a_sentence()
    {
        Assert.Contains("not a PNG", Logo.Read(Picture(40, 20, SKEncodedImageFormat.Jpeg)).Fault, StringComparison.Ordinal);
        Assert.Contains("not a PNG", Logo.Read("<svg onload=\"alert(1)\"/>"u8.ToArray()).Fault, StringComparison.Ordinal);
        Assert.Contains("500 KB", Logo.Read(new byte[600_000]).Fault, StringComparison.Ordinal);
        Assert.Contains("4 × 4", Logo.Read(Picture(4, 4)).Fault, StringComparison.Ordinal);
        Assert.NotNull(Logo.Read([.. Picture(40, 20).Take(20)]).Fault);
        Assert.NotNull(Logo.Read([]).Fault);
    }
}
