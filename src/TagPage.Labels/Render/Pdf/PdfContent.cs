using System.Globalization;
using System.Text;
using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Labels.Text;

namespace TagPage.Labels.Render.Pdf;

/// <summary>Draws one page in the words of a PDF content stream. Everything is black: the ink is in the printer.</summary>
internal sealed class PdfContent(PrintPage page, IReadOnlyDictionary<LabelFont, (string Name, PdfFont Font)> fonts)
{
    public const double PointsPerMm = 72 / 25.4;

    private readonly StringBuilder _text = new();

    public byte[] Draw()
    {
        Add($"0 g\n");
        foreach (var mark in page.Marks)
            Add($"{Pt(mark.XMm)} {Pt(page.HeightMm - mark.YMm - mark.HeightMm)} {Pt(mark.WidthMm)} {Pt(mark.HeightMm)} re f\n");
        foreach (var placed in page.Labels)
            Draw(placed);
        return Encoding.ASCII.GetBytes(_text.ToString());
    }

    // Within a label one unit is one printer dot, counted downwards; letters are turned upright again.
    private void Draw(PlacedLabel placed)
    {
        var dot = placed.Label.Stock.Printer.DotMm * PointsPerMm;
        Add($"q {Number(dot)} 0 0 {Number(-dot)} {Pt(placed.XMm)} {Pt(page.HeightMm - placed.YMm)} cm\n");
        foreach (var piece in placed.Label.Pieces)
        {
            switch (piece)
            {
                case SquarePiece square:
                    Fill(square.X, square.Y, square.DotsPerModule, QrRuns.Of(square.Qr));
                    break;
                case PicturePiece picture:
                    Fill(picture.X, picture.Y, 1, QrRuns.Of(picture.Width, picture.Height, picture.IsDark));
                    break;
                case BoxPiece box:
                    Add($"{Number(box.X)} {Number(box.Y)} {Number(box.Width)} {Number(box.Height)} re f\n");
                    break;
                case TextPiece text:
                    Type(text);
                    break;
            }
        }
        Add($"Q\n");
    }

    // One path for a whole symbol: filled piece by piece, viewers would draw hairlines between the pieces.
    private void Fill(double x, double y, int scale, IEnumerable<(int Column, int Row, int Length)> runs)
    {
        foreach (var (column, row, length) in runs)
            Add($"{Number(x + column * scale)} {Number(y + row * scale)} {length * scale} {scale} re\n");
        Add($"f\n");
    }

    private void Type(TextPiece piece)
    {
        foreach (var (run, x) in piece.RunsPlaced())
        {
            var (name, font) = fonts[run.Font];
            Add($"BT /{name} {Number(piece.Size)} Tf 1 0 0 -1 {Number(x)} {Number(piece.Baseline)} Tm\n");
            Show(run, font, piece.Size);
            Add($"ET\n");
        }
    }

    // The number after a glyph moves the pen back by thousandths of the size: the fit to the dots, and marks over letters.
    private void Show(GlyphRun run, PdfFont font, int size)
    {
        var (toThousand, dots, rise) = (1000.0 / run.Font.UnitsPerEm, (double)size / run.Font.UnitsPerEm, 0);
        Add($"[");
        foreach (var (glyph, step) in run.Glyphs.Zip(run.Steps(size)))
        {
            if (glyph.OffsetY != rise)
            {
                rise = glyph.OffsetY;
                Add($"] TJ {Number(rise * dots)} Ts [");
            }
            if (glyph.OffsetX != 0)
                Add($"{Number(-glyph.OffsetX * toThousand)} ");
            Add($"<{font.IdOf(glyph.Id):X4}>");
            var back = (font.AdvanceOf(glyph.Id) + glyph.OffsetX) * toThousand - step * 1000 / size;
            if (Math.Abs(back) >= 0.5)
                Add($" {Thousandths(back)} ");
        }
        Add($"] TJ{(rise == 0 ? "" : " 0 Ts")}\n");
    }

    private static string Thousandths(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    private static string Pt(double mm) => Number(mm * PointsPerMm);

    private static string Number(double value) => value.ToString("0.#####", CultureInfo.InvariantCulture);

    private void Add(FormattableString text) => _text.Append(text.ToString(CultureInfo.InvariantCulture));
}
