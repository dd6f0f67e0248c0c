using TagPage.Core.Players;

namespace TagPage.Core.Forecast;

/// <summary>
/// Hours played on a set of strings by a given day, H(t). The one place that knows how hours add up over time;
/// every limit asks here.
/// </summary>
/// <param name="Strung">The day the strings went in.</param>
/// <param name="HoursAWeek">This racket's hours of play a week, 0 or more.</param>
public readonly record struct HoursPlayed(DateOnly Strung, double HoursAWeek)
{
    /// <summary>From the player's habits and the racket's share of play (0 to 1).</summary>
    public static HoursPlayed At(DateOnly strung, Play play, double share) =>
        new(strung, PlayedTimes.AWeek(play, share) * (double)Math.Clamp(play.HoursATime, 0, 24));

    /// <summary>Hours played by the end of a day; 0 before the strings went in.</summary>
    public double By(DateOnly day) => HoursAWeek * Math.Max(0, day.DayNumber - Strung.DayNumber) / 7;

    /// <summary>Last day by whose end no more than this many hours have been played; null without any play.</summary>
    public DateOnly? LastDayWithin(double hours) =>
        HoursAWeek > 0 ? Days.After(Strung, Days.Whole(7 * hours / HoursAWeek)) : null;
}
