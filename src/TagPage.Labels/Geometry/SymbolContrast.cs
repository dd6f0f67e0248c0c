using TagPage.Core.Colour;

namespace TagPage.Labels.Geometry;

/// <summary>
/// Symbol contrast as ISO/IEC 15415 defines it: the lightest reflectance less the darkest. It grades 4 from 70 %, 3 from
/// 55 %, 2 from 40 %, 1 from 20 %, and fails under that; these limits are from memory, the standard was not at hand.
/// Reflectances are estimated from screen colours: a real tape and ink may differ, so try one.
/// </summary>
/// <param name="AllLight">As a phone's camera sees it: by relative luminance.</param>
/// <param name="RedLight">As a scanner with red light, near 660 nm, sees it: by the red channel alone, whose own light is nearer to 610 nm. Below 0 where the ink is the lighter of the two.</param>
public readonly record struct SymbolContrast(double AllLight, double RedLight)
{
    /// <summary>Under this a symbol fails.</summary>
    public const double Least = 0.20;

    /// <summary>From here on it is of grade 2 or better, which is what most uses of symbols ask for.</summary>
    public const double Fair = 0.40;

    public static SymbolContrast Of(Rgb tape, Rgb ink) =>
        new(Contrast.Luminance(tape) - Contrast.Luminance(ink), Contrast.Luminance(RedOf(tape)) - Contrast.Luminance(RedOf(ink)));

    private static Rgb RedOf(Rgb colour) => new(colour.Red, colour.Red, colour.Red);
}
