using TagPage.Core.Players;
using TagPage.Core.Strings;

namespace TagPage.Core.Forecast;

/// <summary>The rule for a player who has none of their own. Age plays no part (common practice, no source).</summary>
public static class StartRule
{
    /// <summary>From this many times a week, counted over all of the player's rackets, hours count as well.</summary>
    public const int OftenTimesAWeek = 3;

    /// <summary>Whichever comes first for polyester or aramid mains or frequent play, else times a week.</summary>
    public static RestringRule For(Play play, Bed? bed) =>
        play.TimesAWeek >= OftenTimesAWeek || bed?.Mains.Material is Material.Polyester or Material.Aramid
            ? RestringRule.WhicheverFirst
            : RestringRule.TimesAWeek;
}
