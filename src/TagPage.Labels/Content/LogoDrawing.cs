using System.Diagnostics;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using SkiaSharp;
using Svg.Skia;

namespace TagPage.Labels.Content;

/// <summary>Reads a logo that is an SVG: shapes only, which need nothing from outside the file.</summary>
internal static class LogoDrawing
{
    private const int MostElements = 5000;

    /// <summary>For what is small but slow: hair-fine dashes, masks upon masks. It ends by itself with the shape it is at.</summary>
    private static readonly TimeSpan MostTime = TimeSpan.FromSeconds(5);

    private const string Unreadable = "This SVG cannot be read or shows nothing. Save it once more as plain SVG and send that.";

    private const string NeedsMore = "This SVG holds more than shapes: letters, pictures, scripts or links to other files. Turn letters into paths, take the rest out, and save it as plain SVG.";

    private const string TooMuch = "This SVG draws too much: shapes that are repeated within each other many times over, or without end. Simplify it and send that.";

    /// <summary>Shapes and what paints, groups or cuts them (SVG 1.1, the elements of its chapters 5, 8, 9, 13 and 14).</summary>
    private static readonly HashSet<string> Allowed =
    [
        "svg", "g", "defs", "symbol", "use", "title", "desc", "metadata", "style", "path", "rect", "circle", "ellipse", "line",
        "polyline", "polygon", "linearGradient", "radialGradient", "stop", "clipPath", "mask", "pattern",
    ];

    /// <summary>Whether the file begins like markup; whether it is an SVG shows when it is read.</summary>
    public static bool LooksLikeOne(ReadOnlySpan<byte> upload)
    {
        var start = upload.StartsWith(Encoding.UTF8.Preamble) ? upload[Encoding.UTF8.Preamble.Length..] : upload;
        return start.TrimStart(" \t\r\n"u8) is [(byte)'<', ..];
    }

    /// <summary>The drawing as large as fits, or why it is not taken, in a sentence.</summary>
    public static (SKBitmap? Bitmap, string? Fault) Read(byte[] upload, int width, int height)
    {
        if (Parse(upload) is not { } markup)
            return (null, Unreadable);
        if (NeedsMoreThanShapes(markup))
            return (null, NeedsMore);
        if (DrawingCost.IsTooMuch(markup))
            return (null, TooMuch);
        var drawing = Task.Factory.StartNew(() => Draw(markup, width, height), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        return Task.WaitAny([drawing], MostTime) == 0 ? drawing.GetAwaiter().GetResult() : (null, TooMuch);
    }

    private static (SKBitmap? Bitmap, string? Fault) Draw(XElement markup, int width, int height)
    {
        using var svg = new SKSvg();
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(markup.ToString()));
        if (svg.Load(stream) is not { CullRect: { Width: > 0, Height: > 0 } box } picture || !float.IsFinite(box.Width) || !float.IsFinite(box.Height))
            return (null, Unreadable);
        var scale = Math.Min(width / box.Width, height / box.Height);
        var bitmap = new SKBitmap(Math.Clamp((int)(box.Width * scale), 1, width), Math.Clamp((int)(box.Height * scale), 1, height));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        canvas.Scale(scale);
        canvas.Translate(-box.Left, -box.Top);
        var isWhole = DrawInTime(svg, canvas);
        canvas.Flush();
        if (isWhole && bitmap.Pixels.Any(pixel => pixel != SKColors.White))
            return (bitmap, null);
        bitmap.Dispose();
        return (null, isWhole ? Unreadable : TooMuch);
    }

    /// <summary>One shape after the other, so that nothing goes on drawing for an answer that was given long ago.</summary>
    private static bool DrawInTime(SKSvg svg, SKCanvas canvas)
    {
        var watch = Stopwatch.StartNew();
        foreach (var command in svg.Model?.Commands ?? [])
        {
            if (watch.Elapsed > MostTime)
                return false;
            svg.SkiaModel.Draw(command, canvas, wireframe: false);
        }
        return true;
    }

    private static XElement? Parse(byte[] upload)
    {
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, MaxCharactersInDocument = Logo.MostBytes };
        try
        {
            using var stream = new MemoryStream(upload);
            using var reader = XmlReader.Create(stream, settings);
            var root = XElement.Load(reader);
            return root.Name is { LocalName: "svg", NamespaceName: "http://www.w3.org/2000/svg" } && root.Descendants().Count() <= MostElements ? root : null;
        }
        catch (XmlException)
        {
            return null;
        }
    }

    /// <summary>Drops the private elements of drawing programs on the way; they draw nothing.</summary>
    private static bool NeedsMoreThanShapes(XElement root)
    {
        root.Descendants().Where(e => e.Name.Namespace != root.Name.Namespace || e.Name.LocalName == "metadata").ToList().ForEach(e => e.Remove());
        return root.DescendantsAndSelf().Any(e => !Allowed.Contains(e.Name.LocalName) || e.Attributes().Any(IsUnfit))
            || root.Descendants().Where(e => e.Name.LocalName == "style").Any(e => ReachesOut(e.Value));
    }

    private static bool IsUnfit(XAttribute attribute) =>
        attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
        || (attribute.Name.LocalName == "href" && !attribute.Value.StartsWith('#'))
        || (!attribute.IsNamespaceDeclaration && ReachesOut(attribute.Value));

    private static bool ReachesOut(string css)
    {
        var bare = string.Concat(css.Where(c => !char.IsWhiteSpace(c) && c is not ('"' or '\'')));
        return bare.Contains("@import", StringComparison.OrdinalIgnoreCase) || bare.Contains('\\', StringComparison.Ordinal)
            || bare.Replace("url(#", "", StringComparison.OrdinalIgnoreCase).Contains("url(", StringComparison.OrdinalIgnoreCase);
    }
}
