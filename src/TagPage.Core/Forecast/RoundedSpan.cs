namespace TagPage.Core.Forecast;

/// <summary>The unit a person would count a span of time in.</summary>
public enum SpanUnit { Days, Weeks, Months, Years }

/// <summary>A span of time as a person would say it: 12 days, 3 weeks, 5 months, 2 years.</summary>
/// <param name="Count">Of the unit, rounded to the nearest whole.</param>
/// <param name="Unit">Days up to 20, weeks up to 83 days, months up to two years, then years.</param>
public readonly record struct RoundedSpan(long Count, SpanUnit Unit)
{
    private const int LastCountedInDays = 20;
    private const int LastCountedInWeeks = 83;
    private const int LastCountedInMonths = 729;

    /// <param name="days">0 or more.</param>
    public static RoundedSpan Of(long days) => days switch
    {
        <= LastCountedInDays => new(days, SpanUnit.Days),
        <= LastCountedInWeeks => new(Round(days / 7.0), SpanUnit.Weeks),
        <= LastCountedInMonths => new(Round(days / (365.25 / 12)), SpanUnit.Months),
        _ => new(Round(days / 365.25), SpanUnit.Years),
    };

    private static long Round(double count) => (long)Math.Round(count);
}
