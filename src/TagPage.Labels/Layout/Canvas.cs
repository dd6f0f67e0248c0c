using TagPage.Labels.Content;

namespace TagPage.Labels.Layout;

/// <summary>The room of one label: where the square stands, what is left for lines, where the logo goes.</summary>
internal sealed class Canvas
{
    private readonly LabelStock _stock;
    private readonly TagQr? _square;
    private readonly Picture? _logo;
    private readonly int _dotsPerModule, _top, _height, _margin, _textAt, _most, _logoWidth;

    public Canvas(LabelStock stock, TagQr? square, Picture? logo)
    {
        (_stock, _square, _logo) = (stock, square, logo);
        _top = stock.Printer.FirstDot(stock.Tape.WidthMm);
        _height = stock.Printer.PrintableDots(stock.Tape.WidthMm);
        _margin = Math.Max(1, stock.Printer.Dots(stock.Printer.MarginMm));
        if (square is not null)
            _dotsPerModule = Geometry.SquareFit.On(square.Modules, stock.Tape, stock.Printer, stock.Limits).DotsPerModule;
        _textAt = square is null ? _margin : (square.Modules + 2 * TagQr.QuietZone) * _dotsPerModule;
        _most = (int)((stock.FoldGapMm is { } gap ? (stock.MaxLengthMm - gap) / 2 : stock.MaxLengthMm) / stock.Printer.DotMm);
        _logoWidth = logo is null || _height == 0 ? 0 : (int)Math.Ceiling((double)_height * logo.Width / logo.Height);
    }

    public bool HasLogo => _logoWidth > 0;

    /// <summary>What fits lines into the room beside the square.</summary>
    public LineFitter Fitter(params string[] warnings)
    {
        var width = _most - _textAt - _margin - 1 - (HasLogo ? _logoWidth + _margin : 0);
        return new LineFitter(_height, width, _stock.Printer.PointsToDots(Layouter.LeastPoints),
            _stock.Printer.PointsToDots(_stock.LargestPoints), warnings);
    }

    /// <summary>Everything in its place, and how long the label gets.</summary>
    public (int LengthDots, IReadOnlyList<Piece> Pieces) Place(ColumnFit? lines, int shortest)
    {
        var pieces = new List<Piece>();
        if (_square is not null)
            pieces.Add(new SquarePiece(TagQr.QuietZone * _dotsPerModule, SquareTop(_square), _dotsPerModule, _square));
        double end = _textAt;
        if (lines is not null)
            end = PlaceLines(lines, pieces) + _margin;
        if (HasLogo && end + _logoWidth + _margin <= _most)
        {
            pieces.Add(new PicturePiece(Math.Ceiling(end), _top, _logoWidth, _height, _logo!));
            end = Math.Ceiling(end) + _logoWidth + _margin;
        }
        return (Math.Max(shortest, (int)Math.Ceiling(end)), pieces);
    }

    private int SquareTop(TagQr square) => _top + (_height - square.Modules * _dotsPerModule) / 2;

    private double PlaceLines(ColumnFit lines, List<Piece> pieces)
    {
        double x = _textAt;
        foreach (var column in lines.Columns)
        {
            var y = _top + (_height - ColumnFit.HeightOf(column) * lines.Size) / 2;
            foreach (var line in column)
            {
                var size = line.Scale * lines.Size;
                pieces.Add(new TextPiece(x, y + ColumnFit.Ascent * size, size, line.Text));
                y += ColumnFit.LineHeight * size;
            }
            x += (ColumnFit.WidthOf(column) + ColumnFit.Gap) * lines.Size;
        }
        return x - ColumnFit.Gap * lines.Size;
    }
}
