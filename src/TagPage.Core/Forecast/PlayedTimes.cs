using TagPage.Core.Players;

namespace TagPage.Core.Forecast;

/// <summary>A racket's times a week: the player's times by the racket's share.</summary>
internal static class PlayedTimes
{
    // A week has 168 hours; more times than that is a typo.
    private const int Most = 168;

    public static double AWeek(Play play, double share) =>
        (double)Math.Clamp(play.TimesAWeek, 0, Most) * (double.IsNaN(share) ? 0 : Math.Clamp(share, 0, 1));
}
