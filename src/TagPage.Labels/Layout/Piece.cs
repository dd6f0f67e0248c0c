using TagPage.Labels.Content;
using TagPage.Labels.Text;

namespace TagPage.Labels.Layout;

/// <summary>Something on a label. All places are in printer dots from the tape's upper left corner.</summary>
public abstract record Piece(double X)
{
    internal abstract Piece MovedBy(double dots);
}

/// <summary>A QR symbol, its own upper left module at X, Y; its quiet zone is left free by the layout.</summary>
public sealed record SquarePiece(double X, int Y, int DotsPerModule, TagQr Qr) : Piece(X)
{
    internal override Piece MovedBy(double dots) => this with { X = X + dots };
}

/// <summary>A line of type.</summary>
/// <param name="X">Its left end, a whole dot.</param>
/// <param name="Baseline">The line its letters stand on.</param>
/// <param name="Size">Size of type, in dots.</param>
/// <param name="Text">What it says.</param>
public sealed record TextPiece(double X, int Baseline, int Size, ShapedText Text) : Piece(X)
{
    /// <summary>In whole dots.</summary>
    public int Width => Text.WidthAt(Size);

    internal override Piece MovedBy(double dots) => this with { X = X + dots };
}

/// <summary>A black and white picture.</summary>
public sealed record PicturePiece(double X, int Y, int Width, int Height, Picture Picture) : Piece(X)
{
    /// <summary>Whether the dot in a column and a row of the piece is dark.</summary>
    internal bool IsDark(int column, int row) => Picture.IsDark((column + 0.5) / Width, (row + 0.5) / Height);

    internal override Piece MovedBy(double dots) => this with { X = X + dots };
}

/// <summary>A filled box: a fold mark or a cut mark.</summary>
public sealed record BoxPiece(double X, double Y, double Width, double Height) : Piece(X)
{
    internal override Piece MovedBy(double dots) => this with { X = X + dots };
}
