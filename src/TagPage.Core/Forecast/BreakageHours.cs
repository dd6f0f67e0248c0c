using TagPage.Core.Forecast.Learning;
using TagPage.Core.Players;
using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Core.Forecast;

/// <summary>Hours by which one bed in five would have broken by wear, for one player and main-string material.</summary>
public static class BreakageHours
{
    /// <summary>Null with too few breaks by wear known.</summary>
    public static double? Of(Learned learned, Material mains, Sport sport, Hitting hitting, StartingValues values)
    {
        var wear = values.Wear;
        if (learned.BrokeAfter.Count < wear.FewestBreaks)
            return null;
        var life = values.Of(sport).Of(mains).LifeHours * values.Hitting.Of(hitting);
        return WearModel.Of(life, wear, learned.BrokeAfter, learned.CameOutAfter).HoursLastedBy(1 - (1 / wear.OneIn));
    }
}
