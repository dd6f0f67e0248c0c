using System.Globalization;
using System.Text;
using SkiaSharp;
using TagPage.Labels.Layout;
using TagPage.Labels.Render;

namespace TagPage.Labels.Tests.Cast;

/// <summary>The three renderings as pixels, each by a program that is not ours where there is one.</summary>
internal static class Rasters
{
    public static Bitmap OfPng(LaidLabel label) => PngReader.Read(Png.Of(LabelDots.Of(label), label.Stock.Printer.Dpi));

    /// <summary>Pages of a PDF as poppler draws them.</summary>
    public static List<Bitmap> OfPdf(byte[] pdf, int dpi)
    {
        var poppler = Tools.Poppler("pdftoppm");
        return Tools.InFolder(folder =>
        {
            File.WriteAllBytes(Path.Combine(folder, "labels.pdf"), pdf);
            Tools.Run(poppler, folder, "-r", dpi.ToString(CultureInfo.InvariantCulture), "-gray", "labels.pdf", "page");
            return Directory.GetFiles(folder, "page*.pgm").Order(StringComparer.Ordinal).Select(file => Pgm(File.ReadAllBytes(file))).ToList();
        });
    }

    /// <summary>SVGs as Chromium draws them, each in a box of its own, at 4 pixels a CSS pixel (384 dots an inch).</summary>
    public static List<Bitmap> OfSvg(IReadOnlyList<string> svgs)
    {
        const int boxWidth = 340, boxHeight = 140, scale = 4;
        var chromium = Tools.Chromium();
        return Tools.InFolder(folder =>
        {
            var boxes = svgs.Select((svg, i) => $"<div style=\"position:absolute;left:0;top:{i * boxHeight}px\">{svg}</div>");
            File.WriteAllText(Path.Combine(folder, "labels.html"), $"<!doctype html><body style=\"margin:0\">{string.Concat(boxes)}");
            Tools.Run(chromium, folder, "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", $"--user-data-dir={folder}/profile",
                $"--force-device-scale-factor={scale}", $"--window-size={boxWidth},{boxHeight * svgs.Count}", $"--screenshot={folder}/labels.png", $"file://{folder}/labels.html");
            using var shot = SKBitmap.Decode(Path.Combine(folder, "labels.png"));
            return svgs.Select((_, i) => Cut(shot, i * boxHeight * scale, boxWidth * scale, boxHeight * scale)).ToList();
        });
    }

    private static Bitmap Cut(SKBitmap shot, int top, int width, int height)
    {
        var gray = new byte[width * height];
        var pixels = shot.GetPixelSpan();
        // Asked once: each time these go through to Skia.
        var (rowBytes, pixelBytes) = (shot.RowBytes, shot.BytesPerPixel);
        for (var y = 0; y < height; y++)
        {
            var row = pixels.Slice((top + y) * rowBytes, width * pixelBytes);
            for (var x = 0; x < width; x++)
                gray[y * width + x] = row[x * pixelBytes + 1]; // green is the second of four, in RGBA and in BGRA
        }
        return new Bitmap(width, height, gray);
    }

    // Netpbm's P5: three numbers, one blank, then the bytes.
    private static Bitmap Pgm(byte[] file)
    {
        var (numbers, at) = (new List<int>(), 2);
        while (numbers.Count < 3)
        {
            var end = at + 1;
            while (!char.IsWhiteSpace((char)file[end]))
                end++;
            numbers.Add(int.Parse(Encoding.ASCII.GetString(file, at, end - at), CultureInfo.InvariantCulture));
            at = end;
        }
        return new Bitmap(numbers[0], numbers[1], file[(at + 1)..]);
    }
}
