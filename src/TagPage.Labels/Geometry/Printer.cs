namespace TagPage.Labels.Geometry;

/// <summary>What the label printer can do.</summary>
/// <param name="MarginMm">The strip it leaves free along both edges of the tape.</param>
/// <param name="Dpi">Its dots an inch.</param>
public sealed record Printer(double MarginMm, int Dpi)
{
    private const double MmPerInch = 25.4;

    // 12 mm at 25.4 dots an inch is 12 dots, not 11.999….
    private const double Slack = 1e-9;

    /// <summary>A margin of 1 mm and 180 dots an inch (common practice).</summary>
    public static Printer Usual { get; } = new(1.0, 180);

    /// <summary>Side of one dot in mm.</summary>
    public double DotMm => MmPerInch / Dpi;

    /// <summary>Whole dots between the margins of a tape: width − 2 · margin, cut down; 0 where nothing is left.</summary>
    public int PrintableDots(double tapeMm) => Math.Max(0, (int)Math.Floor((tapeMm - 2 * MarginMm) / DotMm + Slack));

    /// <summary>Whole dots across a tape, margins included, to the nearest.</summary>
    public int DotsAcross(double tapeMm) => Dots(tapeMm);

    /// <summary>The first printable dot, counted from the tape's upper edge: both margins alike.</summary>
    public int FirstDot(double tapeMm) => (DotsAcross(tapeMm) - PrintableDots(tapeMm)) / 2;

    /// <summary>A length in dots, to the nearest.</summary>
    public int Dots(double mm) => (int)Math.Round(mm / DotMm, MidpointRounding.AwayFromZero);

    /// <summary>A size of type in dots: a point is 1/72 inch.</summary>
    public double PointsToDots(double points) => points * Dpi / 72;
}
