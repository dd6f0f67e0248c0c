using SkiaSharp;

namespace TagPage.Labels.Photos;

/// <summary>
/// A photo as it is kept: drawn anew from what was sent, upright, as JPEG. Of the file itself nothing stays, so neither does where
/// and when it was taken, by which phone, nor anything else that was hidden in it.
/// </summary>
public sealed record Photo(int Width, int Height, byte[] Picture, byte[] Small)
{
    /// <summary>Largest file that is taken, in bytes; phones make less.</summary>
    public const int MostBytes = 20_000_000;

    /// <summary>More than a phone's camera has (8192 × 6144); known from the file's head, before anything is unpacked.</summary>
    public const int MostPixels = 51_000_000;

    /// <summary>Longer side of what is kept, and of the small one for lists.</summary>
    private const int KeptSide = 1600, SmallSide = 320;

    private const int KeptBytes = 350_000;

    private static readonly int[] Qualities = [82, 70, 55, 40];

    private static readonly SKEncodedImageFormat[] Taken = [SKEncodedImageFormat.Jpeg, SKEncodedImageFormat.Png, SKEncodedImageFormat.Webp];

    /// <summary>One at a time: unpacked, a large one takes 200 MB.</summary>
    private static readonly Lock Turn = new();

    public static (Photo? Photo, string? Fault) TooLarge { get; } = (null, $"It has more than {MostBytes / 1_000_000} MB. Send it smaller.");

    /// <summary>The photo, or why it is not taken, in a sentence. What counts is what is in the file, not its name.</summary>
    public static (Photo? Photo, string? Fault) Read(byte[] upload)
    {
        if (upload.Length > MostBytes)
            return TooLarge;
        using var data = SKData.CreateCopy(upload);
        using var codec = SKCodec.Create(data);
        if (codec is null || !Taken.Contains(codec.EncodedFormat))
            return (null, "It is no photo that can be read. Send a JPEG, PNG or WebP.");
        if (codec.Info is not { Width: > 0, Height: > 0 } || (long)codec.Info.Width * codec.Info.Height > MostPixels)
            return (null, $"It is {codec.Info.Width} × {codec.Info.Height} pixels. Send one of up to {MostPixels / 1_000_000} million pixels.");
        lock (Turn)
        {
            using var bitmap = Unpack(codec);
            return bitmap is null ? (null, "It is damaged or only half of it arrived. Send it again.") : (Draw(bitmap, codec.EncodedOrigin), null);
        }
    }

    /// <summary>No larger than is needed, where the format can; null where it does not end as it should.</summary>
    private static SKBitmap? Unpack(SKCodec codec)
    {
        var size = codec.GetScaledDimensions(Math.Min(1f, (float)KeptSide / Math.Max(codec.Info.Width, codec.Info.Height)));
        var bitmap = new SKBitmap();
        if (bitmap.TryAllocPixels(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()))
            && codec.GetPixels(bitmap.Info, bitmap.GetPixels()) == SKCodecResult.Success)
            return bitmap;
        bitmap.Dispose();
        return null;
    }

    private static Photo Draw(SKBitmap bitmap, SKEncodedOrigin origin)
    {
        using var kept = Upright(bitmap, origin, KeptSide);
        using var small = Upright(bitmap, origin, SmallSide);
        return new Photo(kept.Width, kept.Height, Encode(kept, KeptBytes), Encode(small, KeptBytes));
    }

    private static SKBitmap Upright(SKBitmap bitmap, SKEncodedOrigin origin, int side)
    {
        var scale = Math.Min(1, (float)side / Math.Max(bitmap.Width, bitmap.Height));
        var (width, height) = (Math.Max(1, (int)MathF.Round(bitmap.Width * scale)), Math.Max(1, (int)MathF.Round(bitmap.Height * scale)));
        var lies = origin >= SKEncodedOrigin.LeftTop;
        var upright = new SKBitmap(new SKImageInfo(lies ? height : width, lies ? width : height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(upright);
        canvas.Clear(SKColors.White);
        canvas.SetMatrix(Turned(origin, width, height));
        using var image = SKImage.FromBitmap(bitmap);
        canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        canvas.Flush();
        return upright;
    }

    /// <summary>How the sent picture is laid to stand upright (Exif 2.32, tag 274 Orientation); width and height are those it was sent with.</summary>
    private static SKMatrix Turned(SKEncodedOrigin origin, int width, int height) => origin switch
    {
        SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, width, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, width, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new SKMatrix(0, -1, height, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, height, -1, 0, width, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, width, 0, 0, 1),
        _ => SKMatrix.Identity,
    };

    /// <summary>As good as fits; what fits in no quality is as small as the lowest makes it.</summary>
    private static byte[] Encode(SKBitmap bitmap, int most)
    {
        byte[] bytes = [];
        foreach (var quality in Qualities)
        {
            using var jpeg = bitmap.Encode(SKEncodedImageFormat.Jpeg, quality);
            bytes = jpeg.ToArray();
            if (bytes.Length <= most)
                break;
        }
        return bytes;
    }
}
