namespace TagPage.Core.Units;

/// <summary>Head sizes, printed on frames in square inches (tennis) or square centimetres (squash).</summary>
public static class HeadSize
{
    /// <summary>Square inches as square centimetres, unrounded.</summary>
    public static decimal ToSquareCm(decimal squareInches) => squareInches * Factors.SquareCmPerSquareInch;

    /// <summary>Square centimetres as square inches, unrounded.</summary>
    public static decimal ToSquareInches(decimal squareCm) => squareCm / Factors.SquareCmPerSquareInch;
}
