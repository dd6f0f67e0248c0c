using SkiaSharp;
using TagPage.Labels.Layout;

namespace TagPage.Labels.Render;

/// <summary>A label in pure black and white, at the printer's own dots.</summary>
public static class LabelDots
{
    private const int Threshold = 128;

    /// <summary>Draws the label; margins are part of it.</summary>
    public static Dots Of(LaidLabel label)
    {
        var dots = new Dots(label.LengthDots, label.HeightDots);
        Type(label, dots);
        foreach (var piece in label.Pieces)
        {
            switch (piece)
            {
                case SquarePiece square:
                    var (left, k) = ((int)Math.Round(square.X), square.DotsPerModule);
                    foreach (var (column, row, length) in QrRuns.Of(square.Qr))
                        dots.Ink(left + column * k, square.Y + row * k, length * k, k);
                    break;
                case PicturePiece picture:
                    foreach (var (column, row, length) in QrRuns.Of(picture.Width, picture.Height, picture.IsDark))
                        dots.Ink((int)picture.X + column, picture.Y + row, length, 1);
                    break;
                case BoxPiece box:
                    dots.Ink((int)Math.Round(box.X), (int)Math.Round(box.Y), Whole(box.Width), Whole(box.Height));
                    break;
            }
        }
        return dots;
    }

    private static int Whole(double dots) => Math.Max(1, (int)Math.Round(dots));

    private static void Type(LaidLabel label, Dots dots)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(label.LengthDots, label.HeightDots, SKColorType.Gray8, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        foreach (var piece in label.Pieces.OfType<TextPiece>())
            Type(canvas, piece);
        canvas.Flush();
        var pixels = bitmap.GetPixelSpan();
        var rowBytes = bitmap.RowBytes;
        for (var y = 0; y < dots.Height; y++)
        {
            for (var x = 0; x < dots.Width; x++)
            {
                if (pixels[y * rowBytes + x] < Threshold)
                    dots.Ink(x, y);
            }
        }
    }

    private static void Type(SKCanvas canvas, TextPiece piece)
    {
        using var paint = new SKPaint { Color = SKColors.Black, IsAntialias = false };
        foreach (var (run, x) in piece.RunsPlaced())
        {
            using var font = run.Font.At(piece.Size);
            using var builder = new SKTextBlobBuilder();
            builder.AddPositionedRun(
                [.. run.Glyphs.Select(glyph => glyph.Id)], font, [.. run.Places(x, piece).Select(p => new SKPoint((float)p.X, (float)p.Y))]);
            using var blob = builder.Build();
            if (blob is not null)
                canvas.DrawText(blob, 0, 0, paint);
        }
    }
}
