using TagPage.Labels.Content;

namespace TagPage.Labels.Layout;

/// <summary>The room of one label: where the square stands, what is left for type, where the logo goes.</summary>
internal sealed class Canvas
{
    private readonly LabelStock _stock;
    private readonly TagQr? _square;
    private readonly Picture? _logo;
    private readonly int _dotsPerModule, _top, _height, _margin, _textAt, _most, _logoWidth;

    public Canvas(LabelStock stock, TagQr? square, int dotsPerModule, Picture? logo)
    {
        (_stock, _square, _dotsPerModule, _logo) = (stock, square, dotsPerModule, logo);
        _top = stock.Printer.FirstDot(stock.Tape.WidthMm);
        _height = stock.Printer.PrintableDots(stock.Tape.WidthMm);
        _margin = Math.Max(1, stock.Printer.Dots(stock.Printer.MarginMm));
        _textAt = square is null ? _margin : (square.Modules + 2 * TagQr.QuietZone) * _dotsPerModule;
        _most = (int)((stock.FoldGapMm is { } gap ? (stock.MaxLengthMm - gap) / 2 : stock.MaxLengthMm) / stock.Printer.DotMm);
        _logoWidth = logo is null || _height == 0 ? 0 : (int)Math.Ceiling((double)_height * logo.Width / logo.Height);
    }

    public bool HasLogo => _logoWidth > 0;

    /// <summary>The best way to set type into the room beside the square.</summary>
    public Filling? Fill(LabelContent content, Typing typing) =>
        new Search(content, _stock, typing, _height, _most - _textAt - _margin - (HasLogo ? _logoWidth + _margin : 0)).Best();

    /// <summary>Everything in its place, and how long the label gets.</summary>
    public (int LengthDots, IReadOnlyList<Piece> Pieces) Place(Filling? type, int shortest)
    {
        var pieces = new List<Piece>();
        if (_square is not null)
            pieces.Add(new SquarePiece(TagQr.QuietZone * _dotsPerModule, SquareTop(_square), _dotsPerModule, _square));
        var end = _textAt;
        if (type is not null)
        {
            var words = type.Words().ToList();
            var top = _top + Middle(words);
            pieces.AddRange(words.Select(word => new TextPiece(_textAt + word.X, top + word.Baseline, word.Size, word.Text)));
            end += type.Width + _margin;
        }
        if (HasLogo && end + _logoWidth + _margin <= _most)
        {
            pieces.Add(new PicturePiece(end, _top, _logoWidth, _height, _logo!));
            end += _logoWidth + _margin;
        }
        return (Math.Max(shortest, end), pieces);
    }

    // How far down all type goes, so that as much stays free above its ink as below.
    private int Middle(List<Word> words)
    {
        if (words.Count == 0)
            return 0;
        var above = words.Min(word => word.Baseline - word.Text.InkUp(word.Size));
        var below = _height - words.Max(word => word.Baseline + word.Text.InkDown(word.Size));
        return (int)Math.Floor((below - above) / 2.0);
    }

    private int SquareTop(TagQr square) => _top + (_height - square.Modules * _dotsPerModule) / 2;
}
