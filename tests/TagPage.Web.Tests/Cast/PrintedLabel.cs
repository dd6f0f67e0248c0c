using ZXing;
using ZXing.Common;

namespace TagPage.Web.Tests.Cast;

/// <summary>A label as it can be read: its words on a page, its square as dots.</summary>
public static class PrintedLabel
{
    public static string Says(WebPage page) => string.Join('\n', page.Document.QuerySelectorAll(".label-preview title").Select(t => t.TextContent));

    /// <summary>What the square says; null where none can be read.</summary>
    public static string? Read(byte[] png)
    {
        using var bitmap = SkiaSharp.SKBitmap.Decode(png);
        var gray = bitmap.Pixels.Select(pixel => pixel.Green).ToArray();
        var reader = new BarcodeReaderGeneric { AutoRotate = true, Options = new DecodingOptions { PossibleFormats = [BarcodeFormat.QR_CODE], TryHarder = true } };
        return reader.Decode(new RGBLuminanceSource(gray, bitmap.Width, bitmap.Height, RGBLuminanceSource.BitmapFormat.Gray8))?.Text;
    }
}
