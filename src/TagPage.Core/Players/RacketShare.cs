using TagPage.Core.Rackets;

namespace TagPage.Core.Players;

/// <summary>How much of a player's play falls on one racket.</summary>
public static class RacketShare
{
    /// <summary>A racket played regularly weighs 1, a spare its own small weight, any other nothing.</summary>
    public static double Weight(RacketState state, double spareWeight) => state switch
    {
        RacketState.InTurn => 1,
        RacketState.Spare => spareWeight,
        _ => 0,
    };

    /// <summary>The racket's weight over the weights of all rackets of its player.</summary>
    /// <param name="racket">The state of the racket in question.</param>
    /// <param name="all">The states of all the player's rackets, the one in question among them.</param>
    /// <param name="spareWeight">What a spare weighs, 0 to 1.</param>
    /// <returns>0 to 1; 0 when nothing is in play.</returns>
    public static double Of(RacketState racket, IEnumerable<RacketState> all, double spareWeight)
    {
        var sum = all.Sum(state => Weight(state, spareWeight));
        return sum > 0 ? Math.Min(1, Weight(racket, spareWeight) / sum) : 0;
    }
}
