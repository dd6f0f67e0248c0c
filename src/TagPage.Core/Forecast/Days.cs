namespace TagPage.Core.Forecast;

/// <summary>Whole days of a string's life, kept between 0 and ten years so that no date overflows.</summary>
internal static class Days
{
    public const int Most = 3650;

    // Shares such as 1/7 are not exact: a result this close under a whole day is that day.
    private const double Slack = 1e-9;

    public static int Whole(double days) => (int)Math.Clamp(Math.Floor(days + Slack), 0, Most);

    public static DateOnly After(DateOnly start, int days) =>
        DateOnly.FromDayNumber(Math.Min(start.DayNumber + days, DateOnly.MaxValue.DayNumber));

    /// <summary>"1 day", "28 days", "10 years or more".</summary>
    public static string InText(int days) => days switch
    {
        1 => "1 day",
        Most => "10 years or more",
        _ => $"{days} days",
    };
}
