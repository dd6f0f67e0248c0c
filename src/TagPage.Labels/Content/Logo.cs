using SkiaSharp;

namespace TagPage.Labels.Content;

/// <summary>A shop's logo: read from an upload, redrawn in shades of grey, and made pure black and white for a label.</summary>
public static class Logo
{
    /// <summary>Largest file that is taken, in bytes.</summary>
    public const int MostBytes = 500_000;

    private const int MostPixels = 4000;

    // Enough for 36 mm of tape at 360 dots an inch.
    private const int KeptHeight = 480;
    private const int KeptWidth = 1920;

    private static ReadOnlySpan<byte> PngSignature => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>
    /// The picture redrawn as a grey PNG on a white ground, so that nothing else of the file is kept; or why it is not
    /// taken, in a sentence. What counts is what is in the file, not its name.
    /// </summary>
    public static (byte[]? Png, string? Fault) Read(byte[] upload)
    {
        if (upload.Length > MostBytes)
            return (null, $"The picture has more than {MostBytes / 1000} KB. Save it smaller.");
        if (LogoDrawing.LooksLikeOne(upload))
            return ReadDrawing(upload);
        if (!upload.AsSpan().StartsWith(PngSignature))
            return (null, "This is neither PNG nor SVG. Save the logo as one of them and send that.");
        using var data = SKData.CreateCopy(upload);
        using var codec = SKCodec.Create(data);
        if (codec is null)
            return (null, "This PNG cannot be read. Save it once more and send that.");
        if (codec.Info.Width is < 8 or > MostPixels || codec.Info.Height is < 8 or > MostPixels)
            return (null, $"The picture is {codec.Info.Width} × {codec.Info.Height} pixels. Send one of 8 to {MostPixels} on each side.");
        using var bitmap = SKBitmap.Decode(codec);
        return bitmap is null ? (null, "This PNG cannot be read. Save it once more and send that.") : Seen(bitmap);
    }

    private static (byte[]? Png, string? Fault) ReadDrawing(byte[] upload)
    {
        var (bitmap, fault) = LogoDrawing.Read(upload, KeptWidth, KeptHeight);
        using (bitmap)
            return bitmap is null ? (null, fault) : Seen(bitmap);
    }

    private static (byte[]? Png, string? Fault) Seen(SKBitmap bitmap)
    {
        var grey = Grey(bitmap);
        return ToPicture(grey, 255).Dark.Contains(true)
            ? (grey, null)
            : (null, "Nothing on this picture is darker than white. Send the logo in black on white.");
    }

    /// <summary>Black wherever the kept picture is darker than the threshold.</summary>
    /// <param name="png">As <see cref="Read"/> gave it.</param>
    /// <param name="threshold">1 to 255; more makes more of it black.</param>
    public static Picture ToPicture(byte[] png, int threshold)
    {
        using var bitmap = SKBitmap.Decode(png);
        return new Picture(bitmap.Width, bitmap.Height, [.. bitmap.Pixels.Select(pixel => pixel.Green < threshold)]);
    }

    private static byte[] Grey(SKBitmap bitmap)
    {
        var scale = Math.Min(1, Math.Min((double)KeptHeight / bitmap.Height, (double)KeptWidth / bitmap.Width));
        var info = new SKImageInfo(Math.Max(1, (int)(bitmap.Width * scale)), Math.Max(1, (int)(bitmap.Height * scale)), SKColorType.Gray8, SKAlphaType.Opaque);
        using var grey = new SKBitmap(info);
        using var canvas = new SKCanvas(grey);
        canvas.Clear(SKColors.White);
        using var image = SKImage.FromBitmap(bitmap);
        canvas.DrawImage(image, new SKRect(0, 0, info.Width, info.Height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        canvas.Flush();
        using var png = grey.Encode(SKEncodedImageFormat.Png, 100);
        return png.ToArray();
    }
}
