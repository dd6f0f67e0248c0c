using TagPage.Core.Players;
using TagPage.Core.Rackets;

namespace TagPage.Core.Forecast;

/// <summary>A racket of a player's that was played until a day.</summary>
/// <param name="RacketId">Which.</param>
/// <param name="On">The first day without it.</param>
/// <param name="As">Regularly or as a spare.</param>
public sealed record LeftPlay(long RacketId, DateOnly On, RacketState As);

/// <summary>A racket's share of play before a day, from which on another racket of the player's was no longer there to take its part.</summary>
public sealed record EarlierShare(DateOnly Until, double Share)
{
    /// <summary>By the days on which others left, the earliest first.</summary>
    /// <param name="racket">The state of the racket in question.</param>
    /// <param name="all">The states of all that are in play now.</param>
    /// <param name="left">The others that were.</param>
    /// <param name="spareWeight">What a spare weighs.</param>
    public static IReadOnlyList<EarlierShare> Of(RacketState racket, IReadOnlyList<RacketState> all, IReadOnlyList<LeftPlay> left, double spareWeight) =>
    [
        .. from day in left.Select(other => other.On).Distinct().Order()
           select new EarlierShare(day, RacketShare.Of(racket, all.Concat(left.Where(other => other.On >= day).Select(other => other.As)), spareWeight)),
    ];
}
