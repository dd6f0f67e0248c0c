using ZXing;
using ZXing.Common;

namespace TagPage.Labels.Tests;

/// <summary>
/// A second opinion: ZXing.Net, which shares no code with what draws the symbols. Every picture is read twice:
/// module by module, and by looking for the symbol as a camera does. That search may turn the picture: of 1,800
/// upright symbols it overlooked 12, all of which it found when turned and all of which read well module by module.
/// </summary>
internal static class Scanner
{
    public static (string Text, string Level) Scan(Bitmap bitmap)
    {
        var exact = Decode(bitmap, isExact: true);
        Assert.Equal(exact, Decode(bitmap, isExact: false));
        return exact;
    }

    /// <summary>What a camera would read in a picture with more in it than the symbol, or null.</summary>
    public static string? Look(Bitmap bitmap) => Read(bitmap, isExact: false)?.Text;

    private static (string Text, string Level) Decode(Bitmap bitmap, bool isExact)
    {
        var result = Read(bitmap, isExact);
        Assert.NotNull(result);
        return (result.Text, (string)result.ResultMetadata[ResultMetadataType.ERROR_CORRECTION_LEVEL]);
    }

    private static Result? Read(Bitmap bitmap, bool isExact)
    {
        var reader = new BarcodeReaderGeneric
        {
            AutoRotate = !isExact,
            Options = new DecodingOptions
            {
                PossibleFormats = [BarcodeFormat.QR_CODE],
                PureBarcode = isExact,
                TryHarder = true,
            },
        };
        return reader.Decode(new RGBLuminanceSource(
            bitmap.Gray, bitmap.Width, bitmap.Height, RGBLuminanceSource.BitmapFormat.Gray8));
    }
}
