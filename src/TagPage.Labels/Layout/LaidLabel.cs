using TagPage.Labels.Geometry;

namespace TagPage.Labels.Layout;

/// <summary>A finished layout; the renderers only draw it.</summary>
/// <param name="Stock">What it is made for.</param>
/// <param name="LengthDots">Its length in whole printer dots.</param>
/// <param name="Pieces">What is on it.</param>
/// <param name="Square">How the QR sits, or why it is not printed; null where none was asked for.</param>
/// <param name="Warnings">What was shortened, left out or cannot be printed, in sentences.</param>
public sealed record LaidLabel(
    LabelStock Stock, int LengthDots, IReadOnlyList<Piece> Pieces, SquareFit? Square, IReadOnlyList<string> Warnings)
{
    /// <summary>Across the tape, in whole printer dots.</summary>
    public int HeightDots => Stock.Printer.DotsAcross(Stock.Tape.WidthMm);

    /// <summary>Along the tape, in mm.</summary>
    public double LengthMm => LengthDots * Stock.Printer.DotMm;

    /// <summary>Of its smallest type, in dots.</summary>
    internal int LeastSize => Pieces.OfType<TextPiece>().Select(piece => piece.Size).DefaultIfEmpty(0).Min();

    /// <summary>Of the smallest of its figures, in dots; 0 where it has none.</summary>
    internal int FigureSize { get; init; }

    /// <summary>How much of its length the square and its quiet zones take.</summary>
    internal double SquareRoomMm => Pieces.OfType<SquarePiece>().FirstOrDefault() is { } square ? (square.Qr.Modules + 2 * TagQr.QuietZone) * square.DotsPerModule * Stock.Printer.DotMm : 0;

    /// <summary>How much was given up; 0 for nothing.</summary>
    internal double Loss { get; init; }

    /// <summary>All that is said on it, the most important first, for a screen reader and for tests.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];
}
