using TagPage.Core.Forecast.Learning;

namespace TagPage.Core.Forecast;

/// <summary>
/// The day by which one bed in five would have broken by wear. Has no day without play, without known strings, or with
/// fewer than two breaks by wear of this player and material; without any it is left out.
/// </summary>
public sealed record BreakageLimit : LimitDay
{
    private BreakageLimit(DateOnly? day, DateOnly strung, Learned learned) : base(LimitKind.Breakage, day, strung) =>
        (BrokeAfter, CameOutWhole) = ([.. learned.BrokeAfter.Order()], learned.CameOutAfter.Count);

    /// <summary>The hours after which earlier beds broke by wear, the shortest first.</summary>
    public IReadOnlyList<double> BrokeAfter { get; }

    /// <summary>How many earlier beds came out before they broke by wear; the estimate counts their hours too.</summary>
    public int CameOutWhole { get; }

    /// <summary>The hours by which one in <see cref="OneIn"/> would break; null without enough breaks.</summary>
    public double? Hours { get; private init; }

    /// <summary>One bed in so many.</summary>
    public double OneIn { get; private init; }

    /// <summary>This racket's hours of play a week.</summary>
    public double HoursAWeek { get; private init; }

    internal static BreakageLimit? Of(ForecastInput input, DateOnly strung, DateOnly today, StartingValues values)
    {
        if (input.Bed is null || input.Learned.BrokeAfter.Count == 0)
            return null;
        var played = HoursPlayed.Of(input, strung, today);
        var hours = BreakageHours.Of(input.Learned, input.Bed.Mains.Material, input.Sport, input.Play.Hitting, values);
        var day = hours is null ? null : played.LastDayWithin(hours.Value);
        return new BreakageLimit(day, strung, input.Learned) { Hours = hours, OneIn = values.Wear.OneIn, HoursAWeek = played.HoursAWeek };
    }
}
