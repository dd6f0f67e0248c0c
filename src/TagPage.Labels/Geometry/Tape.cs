using TagPage.Core.Colour;

namespace TagPage.Labels.Geometry;

/// <summary>What is printed on.</summary>
/// <param name="WidthMm">One of <see cref="Widths"/>, or what the shop has.</param>
/// <param name="Colour">Of the tape; of clear tape, what it is stuck on.</param>
/// <param name="Ink">What the printer puts on it.</param>
public sealed record Tape(double WidthMm, Rgb Colour, Rgb Ink)
{
    /// <summary>Least contrast of ink and tape for anything to be printed: what WCAG 2.2 asks of large type and graphics (1.4.3, 1.4.11).</summary>
    public const double LeastContrast = 3;

    /// <summary>Whether words on it can be read.</summary>
    public bool IsReadable => Contrast.Ratio(Ink, Colour) >= LeastContrast;

    /// <summary>Common widths in mm (common practice, no source).</summary>
    public static IReadOnlyList<int> Widths { get; } = [6, 9, 12, 18, 24, 36];

    /// <summary>Black on white, 12 mm.</summary>
    public static Tape Usual { get; } = new(12, Rgb.White, Rgb.Black);
}
