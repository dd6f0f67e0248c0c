using TagPage.Core.Players;
using TagPage.Core.Rackets;

namespace TagPage.Core.Forecast;

/// <summary>Hours played on strings by a day that is past, to be written down once and for all.</summary>
public static class FrozenHours
{
    /// <summary>Null where neither habit nor note tells anything.</summary>
    /// <param name="input">The racket as it is now; its share as for a racket in turn where it is no longer in play.</param>
    /// <param name="strung">The day the strings went in.</param>
    /// <param name="day">The day to look at.</param>
    public static double? By(ForecastInput input, DateOnly strung, DateOnly day)
    {
        if (day <= strung)
            return 0;
        var played = HoursPlayed.Of(input, strung, day);
        return played.HoursAWeek > 0 || played.SoFar is not null ? played.By(day) : null;
    }

    /// <summary>The share that a racket had while it was in play, at least about.</summary>
    /// <param name="racket">Its state now.</param>
    /// <param name="all">The states of all the player's rackets in play.</param>
    /// <param name="spareWeight">What a spare weighs.</param>
    public static double Share(RacketState racket, IEnumerable<RacketState> all, double spareWeight) =>
        racket is RacketState.InTurn or RacketState.Spare
            ? RacketShare.Of(racket, all, spareWeight)
            : RacketShare.Of(RacketState.InTurn, all.Append(RacketState.InTurn), spareWeight);
}
