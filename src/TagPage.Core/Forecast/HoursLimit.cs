namespace TagPage.Core.Forecast;

/// <summary>
/// The strings' hours of useful life, used up by play: strung + ⌊7 · life / hours a week⌋ days.
/// Has no day without play, or when the strings are not known.
/// </summary>
public sealed record HoursLimit : LimitDay
{
    private HoursLimit(DateOnly? day, double? lifeHours, double hoursAWeek, bool isHybrid, int? days)
        : base(LimitKind.Hours, day) =>
        (LifeHours, HoursAWeek, IsHybrid, Interval) = (lifeHours, hoursAWeek, isHybrid, days);

    /// <summary>Hours the strings last; in a hybrid the shorter of the two. Null when the strings are not known.</summary>
    public double? LifeHours { get; }

    /// <summary>This racket's hours of play a week.</summary>
    public double HoursAWeek { get; }

    /// <summary>Whether two different strings share the bed.</summary>
    public bool IsHybrid { get; }

    /// <summary>Days from stringing to the limit; null when it has no day.</summary>
    public int? Interval { get; }

    internal static HoursLimit Of(ForecastInput input, DateOnly strung, StartingValues values)
    {
        var played = HoursPlayed.At(strung, input.Play, input.Share);
        double? life = input.Bed is null ? null : StringHours.Of(input.Bed, input, values);
        var day = life is null ? null : played.LastDayWithin(life.Value);
        return new HoursLimit(
            day, life, played.HoursAWeek, input.Bed?.IsHybrid == true, day?.DayNumber - strung.DayNumber);
    }
}
