using SkiaSharp;
using TagPage.Labels.Text;

namespace TagPage.Labels.Papers;

/// <summary>Draws a sheet on A4 pages as a PDF, with the bundled fonts. Lines that are too long are broken between words.</summary>
public static class SheetPdf
{
    public static byte[] Of(Sheet sheet)
    {
        using var pages = new SheetPages(sheet);
        return pages.File();
    }
}

/// <summary>
/// The pages of one sheet, filled from top to bottom. In points, 72 an inch. Nothing is drawn before everything has its place: only
/// then it is known how many pages and which letters there are.
/// </summary>
internal sealed class SheetPages(Sheet sheet) : IDisposable
{
    private const float Width = 595, Height = 842, Left = 62, Right = 533, Top = 62, Bottom = 772;
    private const int Text = 10, Large = 20;
    private const float Line = 14, UsualSide = 110, SwissSide = 46 * 72 / 25.4f;

    private float SumsHeight => 6 + sheet.Sums.Count * (Line + 2) + Line;

    private float SquareHeight => SquareSide + 2 * Line;

    private float SquareSide => sheet.Square is { IsSwiss: true } ? SwissSide : UsualSide;

    private readonly List<List<Action<SKCanvas>>> _pages = [];
    private readonly SheetFonts _fonts = new();
    private float _y;

    public byte[] File()
    {
        Begin();
        Head();
        foreach (var row in sheet.Rows)
            Row(row);
        Sums();
        Square();
        foreach (var note in sheet.Notes)
            Paragraph(note);
        Number();
        return Drawn();
    }

    private void Begin()
    {
        _pages.Add([]);
        _y = Top;
    }

    /// <summary>A new page where that much no longer fits.</summary>
    private void Need(float height)
    {
        if (_y + height > Bottom)
            Begin();
    }

    private void Head()
    {
        var right = _y;
        foreach (var (line, i) in sheet.From.Select((line, i) => (line, i)))
            Write(line, Right, right += Line, Text, i == 0, isRight: true);
        foreach (var line in sheet.To)
            Write(line, Left, _y += Line, Text);
        _y = Math.Max(_y, right) + 2 * Line + Large;
        Write(sheet.Title, Left, _y, Large, isBold: true);
        _y += 8;
        var values = Left + Math.Max(110, (float)sheet.Facts.Select(fact => WidthOf(fact.Name, Text, false)).DefaultIfEmpty().Max() + 12);
        foreach (var (name, value) in sheet.Facts)
        {
            Write(name, Left, _y += Line, Text);
            Write(value, values, _y, Text);
        }
        _y += Line;
    }

    private void Row(SheetRow row)
    {
        var lines = Broken(row.Text, Right - Left - 90, row.IsHeading);
        Need(lines.Count * Line + (row.IsHeading ? 2 * Line : 6));
        if (row.IsHeading)
            Rule();
        foreach (var (line, i) in lines.Select((line, i) => (line, i)))
        {
            Write(line, row.IsHeading ? Left : Left + 12, _y += Line, Text, row.IsHeading);
            if (i == 0)
                Write(row.Amount, Right, _y, Text, isRight: true);
        }
        _y += row.IsHeading ? 0 : 2;
    }

    /// <summary>On one page with the square: nobody pays a square that stands alone without its total.</summary>
    private void Sums()
    {
        Need(SumsHeight + (sheet.Square is null ? 0 : SquareHeight));
        Rule();
        foreach (var (sum, i) in sheet.Sums.Select((sum, i) => (sum, i)))
        {
            var isLast = i == sheet.Sums.Count - 1;
            Write(sum.Name, Left, _y += Line + 2, Text, isLast);
            Write(sum.Value, Right, _y, Text, isLast, isRight: true);
        }
        _y += Line;
    }

    private void Square()
    {
        if (sheet.Square is not { } square)
            return;
        _y += Line;
        var top = _y;
        _pages[^1].Add(canvas => Draw(canvas, square, top));
        var words = _y;
        foreach (var line in sheet.SquareWords.SelectMany(line => Broken(line, Right - Left - SquareSide - 24, false)))
            Write(line, Left + SquareSide + 24, words += Line, Text);
        _y += SquareSide + Line;
    }

    private void Draw(SKCanvas canvas, TransferQr square, float top)
    {
        var module = SquareSide / square.Modules;
        using var path = new SKPathBuilder();
        foreach (var (column, row, length) in square.Runs)
            path.AddRect(SKRect.Create(Left + column * module, top + row * module, length * module, module));
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = false };
        using var all = path.Detach();
        canvas.DrawPath(all, ink);
        using var ground = new SKPaint { Color = SKColors.White, IsAntialias = false };
        foreach (var box in square.Cross)
            canvas.DrawRect(SKRect.Create(Left + (float)box.X * module, top + (float)box.Y * module, (float)box.Wide * module, (float)box.High * module), box.IsDark ? ink : ground);
    }

    private void Paragraph(string note)
    {
        var lines = Broken(note, Right - Left, false);
        Need(lines.Count * Line + 6);
        _y += 6;
        foreach (var line in lines)
            Write(line, Left, _y += Line, Text);
    }

    private void Rule()
    {
        var y = _y += 6;
        _pages[^1].Add(canvas =>
        {
            using var ink = new SKPaint { Color = new SKColor(0x99, 0x99, 0x99), StrokeWidth = 0.5f };
            canvas.DrawLine(Left, y, Right, y, ink);
        });
    }

    private void Number()
    {
        for (var i = 0; i < _pages.Count && _pages.Count > 1; i++)
            Write(_pages[i], sheet.PageOf(i + 1, _pages.Count), Right, 806, 8, isRight: true);
    }

    private byte[] Drawn()
    {
        using var file = new MemoryStream();
        using (var document = SKDocument.CreatePdf(file, new SKDocumentPdfMetadata { Title = sheet.Title, Producer = "TagPage" }))
        {
            foreach (var page in _pages)
            {
                var canvas = document.BeginPage(Width, Height);
                foreach (var draw in page)
                    draw(canvas);
                document.EndPage();
            }
            document.Close();
        }
        return file.ToArray();
    }

    private static List<string> Broken(string text, float width, bool isBold) => LineBreaks.Of(text, line => WidthOf(line, Text, isBold) <= width);

    private static double WidthOf(string text, int size, bool isBold) => Shaper.Shape(text, isBold).Runs.Sum(run => Scale(run, size) * run.Glyphs.Sum(g => (double)g.Advance));

    private static double Scale(GlyphRun run, int size) => (double)size / run.Font.UnitsPerEm;

    private void Write(string text, float x, float y, int size, bool isBold = false, bool isRight = false) => Write(_pages[^1], text, x, y, size, isBold, isRight);

    private void Write(List<Action<SKCanvas>> page, string text, float x, float y, int size, bool isBold = false, bool isRight = false)
    {
        var at = (double)(isRight ? x - (float)WidthOf(text, size, isBold) : x);
        foreach (var run in Shaper.Shape(text, isBold).Runs)
        {
            _fonts.Add(run);
            var left = at;
            page.Add(canvas => Draw(canvas, run, left, y, size));
            at += run.Glyphs.Sum(glyph => glyph.Advance * Scale(run, size));
        }
    }

    private void Draw(SKCanvas canvas, GlyphRun run, double at, float y, int size)
    {
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
        using var font = new SKFont(_fonts.TypefaceOf(run.Font), size);
        using var builder = new SKTextBlobBuilder();
        var (glyphs, scale) = (builder.AllocatePositionedRun(font, run.Glyphs.Count), Scale(run, size));
        for (var i = 0; i < run.Glyphs.Count; i++)
        {
            var glyph = run.Glyphs[i];
            glyphs.Glyphs[i] = glyph.Id;
            glyphs.Positions[i] = new SKPoint((float)(at + glyph.OffsetX * scale), (float)(y - glyph.OffsetY * scale));
            at += glyph.Advance * scale;
        }
        using var blob = builder.Build();
        if (blob is not null)
            canvas.DrawText(blob, 0, 0, ink);
    }

    public void Dispose() => _fonts.Dispose();
}
