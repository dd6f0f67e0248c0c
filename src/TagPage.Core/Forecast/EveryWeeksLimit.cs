namespace TagPage.Core.Forecast;

/// <summary>A fixed number of weeks after stringing, agreed with the player.</summary>
public sealed record EveryWeeksLimit : LimitDay
{
    /// <summary>Fewest weeks that a form accepts.</summary>
    public const int MinWeeks = 1;

    /// <summary>Most weeks that a form accepts.</summary>
    public const int MaxWeeks = 104;

    private EveryWeeksLimit(DateOnly day, DateOnly strung, int weeks) : base(LimitKind.EveryWeeks, day, strung) => Weeks = weeks;

    /// <summary>Weeks from stringing to the limit, 1 to 104.</summary>
    public int Weeks { get; }

    internal static EveryWeeksLimit? Of(ForecastInput input, DateOnly strung)
    {
        if (input.EveryWeeks is not > 0)
            return null;
        var weeks = Math.Min(input.EveryWeeks.Value, MaxWeeks);
        return new EveryWeeksLimit(Days.After(strung, weeks * 7), strung, weeks);
    }
}
