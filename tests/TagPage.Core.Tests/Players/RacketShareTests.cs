using TagPage.Core.Players;
using TagPage.Core.Rackets;

namespace TagPage.Core.Tests.Players;

public class RacketShareTests
{
    [Fact]
    public void Two_in_turn_and_a_spare_share_as_10_to_10_to_1()
    {
        RacketState[] rackets = [RacketState.InTurn, RacketState.InTurn, RacketState.Spare, RacketState.Sold];
        Assert.Equal(10 / 21.0, RacketShare.Of(RacketState.InTurn, rackets, 0.1), 12);
        Assert.Equal(1 / 21.0, RacketShare.Of(RacketState.Spare, rackets, 0.1), 12);
        Assert.Equal(0, RacketShare.Of(RacketState.Sold, rackets, 0.1));
    }

    [Fact]
    public void A_lone_spare_takes_all_the_play() =>
        Assert.Equal(1, RacketShare.Of(RacketState.Spare, [RacketState.Spare, RacketState.Damaged], 0.1));

    [Fact]
    public void Nothing_in_play_has_no_share()
    {
        Assert.Equal(0, RacketShare.Of(RacketState.Resting, [RacketState.Resting], 0.1));
        Assert.Equal(0, RacketShare.Of(RacketState.Spare, [RacketState.Spare], 0));
        Assert.Equal(0, RacketShare.Of(RacketState.InTurn, [], 0.1));
    }
}
