namespace TagPage.Core.Colour;

/// <summary>Contrast of two colours by the formulas of WCAG 2.2 ("relative luminance", "contrast ratio").</summary>
public static class Contrast
{
    /// <summary>Least ratio for running text, success criterion 1.4.3 (AA).</summary>
    public const double Text = 4.5;

    /// <summary>Relative luminance, 0 for black to 1 for white.</summary>
    public static double Luminance(Rgb colour) =>
        0.2126 * Linear(colour.Red) + 0.7152 * Linear(colour.Green) + 0.0722 * Linear(colour.Blue);

    /// <summary>Contrast ratio, 1 to 21, whichever of the two is lighter.</summary>
    public static double Ratio(Rgb one, Rgb other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>
    /// A text colour that keeps at least 4.5:1 on the background: the better of the page's own two,
    /// or black or white if neither is enough. One of black and white always is.
    /// </summary>
    public static Rgb TextOn(Rgb background, Rgb light, Rgb dark)
    {
        var own = Better(background, light, dark);
        return Ratio(background, own) >= Text ? own : Better(background, Rgb.White, Rgb.Black);
    }

    private static Rgb Better(Rgb background, Rgb one, Rgb other) =>
        Ratio(background, one) >= Ratio(background, other) ? one : other;

    private static double Linear(byte channel)
    {
        var value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }
}
