using TagPage.Core.Forecast;
using TagPage.Core.Rackets;

namespace TagPage.Core.Tests.Forecast;

public class FrozenHoursTests
{
    // By hand: weights 1 in turn, 0.1 spare, nothing else; a racket no longer in play counts as one more in turn.
    [Theory]
    [InlineData(RacketState.InTurn, 1 / 2.1)]
    [InlineData(RacketState.Spare, 0.1 / 2.1)]
    [InlineData(RacketState.Resting, 1 / 3.1)]
    [InlineData(RacketState.Sold, 1 / 3.1)]
    public void The_share_is_the_one_it_had_in_play(RacketState racket, double share) =>
        Assert.Equal(share, FrozenHours.Share(racket, [RacketState.InTurn, RacketState.InTurn, RacketState.Spare], 0.1), 12);

    [Fact]
    public void Hours_are_the_rackets_share_of_the_habit()
    {
        Assert.Equal(4.5 / 3, FrozenHours.By(Case.Racket with { Share = 1 / 3.0 }, Case.Strung, Case.Strung.AddDays(7))!.Value, 9);
        Assert.Equal(0, FrozenHours.By(Case.Racket, Case.Strung, Case.Strung));
        Assert.Null(FrozenHours.By(Case.Racket with { Share = 0 }, Case.Strung, Case.Strung.AddDays(7)));
    }
}
