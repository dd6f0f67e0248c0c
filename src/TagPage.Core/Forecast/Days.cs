namespace TagPage.Core.Forecast;

/// <summary>Whole days of a string's life, kept between 0 and ten years so that no date overflows.</summary>
internal static class Days
{
    // Shares such as 1/7 are not exact: a result this close under a whole day is that day.
    private const double Slack = 1e-9;

    public static int Whole(double days) => (int)Math.Clamp(Math.Floor(days + Slack), 0, LimitDay.MostDays);

    public static DateOnly After(DateOnly start, int days) =>
        DateOnly.FromDayNumber(Math.Min(start.DayNumber + days, DateOnly.MaxValue.DayNumber));
}
