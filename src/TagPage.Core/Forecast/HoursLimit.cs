namespace TagPage.Core.Forecast;

/// <summary>
/// The strings' hours of useful life, used up by play: without pause and notes
/// strung + ⌊7 · life / hours a week⌋ days.
/// Has no day without play, when the strings are not known, or while a pause without an end comes first.
/// </summary>
public sealed record HoursLimit : LimitDay
{
    private HoursLimit(DateOnly? day, double? lifeHours, HoursPlayed played, bool isHybrid)
        : base(LimitKind.Hours, day, played.Strung) =>
        (LifeHours, HoursAWeek, IsHybrid, SoFar, HasPauses) = (lifeHours, played.HoursAWeek, isHybrid, played.SoFar, played.HasPauses);

    /// <summary>Hours the strings last; in a hybrid the shorter of the two. Null when the strings are not known.</summary>
    public double? LifeHours { get; }

    /// <summary>This racket's hours of play a week.</summary>
    public double HoursAWeek { get; }

    /// <summary>Whether two different strings share the bed.</summary>
    public bool IsHybrid { get; }

    /// <summary>Hours by today, where some of them were noted; null where they are the habit alone.</summary>
    public double? SoFar { get; }

    /// <summary>Whether pauses move the day.</summary>
    public bool HasPauses { get; }

    /// <summary>Whether hours stand still before they are used up: a pause without an end.</summary>
    public bool StandsStill => Day is null && LifeHours is not null && HoursAWeek > 0;

    internal static HoursLimit Of(ForecastInput input, DateOnly strung, DateOnly today, StartingValues values)
    {
        var played = HoursPlayed.Of(input, strung, today);
        double? life = input.Bed is null ? null : StringHours.Of(input.Bed, input, values);
        return new HoursLimit(life is null ? null : played.LastDayWithin(life.Value), life, played, input.Bed?.IsHybrid == true);
    }
}
