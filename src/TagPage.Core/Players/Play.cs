namespace TagPage.Core.Players;

/// <summary>How much and how hard a player plays, with all rackets together.</summary>
/// <param name="TimesAWeek">0 to <see cref="MaxTimesAWeek"/>.</param>
/// <param name="HoursATime">0 to <see cref="MaxHoursATime"/>.</param>
/// <param name="Hitting">How hard on strings.</param>
public sealed record Play(decimal TimesAWeek, decimal HoursATime, Hitting Hitting)
{
    /// <summary>Most times a week that a form accepts: three a day.</summary>
    public const int MaxTimesAWeek = 21;

    /// <summary>Most hours each time that a form accepts.</summary>
    public const int MaxHoursATime = 8;
}
