namespace TagPage.Core.Customising;

/// <summary>The balance point, measured and in the trade's points: eighths of an inch from the frame's own middle.</summary>
public static class BalancePoint
{
    /// <summary>Centimetres in a point (Brody, Cross, Lindsey, The Physics and Technology of Tennis, 2002).</summary>
    public const double CmPerPoint = 0.3175;

    /// <summary>Points, head light above zero and head heavy below.</summary>
    public static double Points(double balanceCm, double lengthCm) => ((lengthCm / 2) - balanceCm) / CmPerPoint;

    /// <summary>Centimetres from the butt.</summary>
    public static double FromPoints(double points, double lengthCm) => (lengthCm / 2) - (points * CmPerPoint);

    /// <summary>The balance in cm of a racket that lies with its butt on one support and its tip on a scale.</summary>
    /// <param name="tipG">What the scale under the tip shows.</param>
    /// <param name="totalG">What the whole racket weighs.</param>
    /// <param name="lengthCm">From butt to tip.</param>
    public static double FromTip(double tipG, double totalG, double lengthCm) => tipG * lengthCm / totalG;
}
