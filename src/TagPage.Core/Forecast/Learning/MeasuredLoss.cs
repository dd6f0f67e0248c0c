using TagPage.Core.Strings;

namespace TagPage.Core.Forecast.Learning;

/// <summary>What two readings of the same strings with the same instrument say about the tension lost between them.</summary>
public static class MeasuredLoss
{
    /// <summary>
    /// In per cent, negative for a gain. A stiffness-like scale goes with tension, 100 · (1 − r/r₀); tension goes with the
    /// square of pitch, 100 · (1 − (f/f₀)²) (a string's wave equation; Cross and Bower 2001).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A reading is not above 0, or the scale is unknown.</exception>
    public static double Percent(ReadingScale scale, double first, double later)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(first);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(later);
        var ratio = later / first;
        return scale switch
        {
            ReadingScale.Stiffness => 100 * (1 - ratio),
            ReadingScale.Hertz => 100 * (1 - (ratio * ratio)),
            _ => throw new ArgumentOutOfRangeException(nameof(scale), scale, "Not a scale."),
        };
    }
}
