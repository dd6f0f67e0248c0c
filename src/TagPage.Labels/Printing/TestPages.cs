using TagPage.Labels.Content;
using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;

namespace TagPage.Labels.Printing;

/// <summary>Pages to hold a ruler against: every length must come out as asked for.</summary>
public static class TestPages
{
    private const double LineMm = 0.2;

    /// <summary>A square of 50 mm and a scale of 150 mm on a sheet.</summary>
    public static PrintPage On(Paper paper) => new(paper.WidthMm, paper.HeightMm,
        [Words("The square is 50 mm on each side, the scale 150 mm. Print at actual size.", 20, 12)])
    {
        Marks = [.. Frame(20, 30, 50), .. Scale(20, 100, 150)],
    };

    /// <summary>A square as high as the tape prints and a scale of 50 mm on tape.</summary>
    public static PrintPage On(LabelStock stock)
    {
        var (width, margin) = (stock.Tape.WidthMm, stock.Printer.MarginMm);
        var side = Math.Max(1, width - 2 * margin);
        return new PrintPage(side + 56, width, [])
        {
            Marks = [.. Frame(2, margin, side), .. Scale(side + 4, width / 2, 50, side / 2)],
        };
    }

    private static PlacedLabel Words(string text, double x, double y)
    {
        var stock = LabelStock.Usual with { Tape = Tape.Usual with { WidthMm = 12 }, MaxLengthMm = 180 };
        return new PlacedLabel(Layouter.Lay(Purposes.Free([text]), stock), x, y);
    }

    private static IEnumerable<Mark> Frame(double x, double y, double side) =>
    [
        new(x, y, side, LineMm), new(x, y + side - LineMm, side, LineMm),
        new(x, y, LineMm, side), new(x + side - LineMm, y, LineMm, side),
    ];

    // A tick each mm, longer ones at 5 and 10; the outer edges of the first and the last are the length apart.
    private static IEnumerable<Mark> Scale(double x, double y, int length, double tallest = 6)
    {
        yield return new Mark(x, y, length, LineMm);
        for (var mm = 0; mm <= length; mm++)
        {
            var height = tallest * (mm % 10 == 0 ? 1 : mm % 5 == 0 ? 0.75 : 0.5);
            yield return new Mark(x + mm - (mm == 0 ? 0 : mm == length ? LineMm : LineMm / 2), y - height, LineMm, height);
        }
    }
}
