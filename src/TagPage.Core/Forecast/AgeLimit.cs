namespace TagPage.Core.Forecast;

/// <summary>The largest age of strings, however little they are played: they dry, stiffen and slacken by themselves.</summary>
public sealed record AgeLimit : LimitDay
{
    private AgeLimit(DateOnly day, DateOnly strung) : base(LimitKind.Age, day, strung)
    {
    }

    internal static AgeLimit Of(DateOnly strung, StartingValues values) =>
        new(Days.After(strung, Math.Clamp(values.LargestAgeDays, 1, MostDays)), strung);
}
