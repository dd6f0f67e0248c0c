using TagPage.Core.EventDesk;

namespace TagPage.Core.Tests.EventDesk;

public class PressureTests
{
    [Theory]
    [InlineData(44, Pressure.OnTime)]
    [InlineData(45, Pressure.Tight)]
    [InlineData(60, Pressure.Tight)]
    [InlineData(61, Pressure.Late)]
    [InlineData(null, Pressure.Late)]
    public void A_racket_needed_at_sixty(int? ready, Pressure pressure) =>
        Assert.Equal(pressure, Pressures.Of(Court.Racket(1, 30, 60), ready is { } at ? Court.At(at) : null));

    [Fact]
    public void The_match_counts_more_than_a_later_promise() =>
        Assert.Equal(Pressure.Late, Pressures.Of(Court.Racket(1, 30, 60) with { Promised = Court.At(100) }, Court.At(70)));

    [Fact]
    public void Without_a_match_nothing_is_close_but_a_broken_promise_is_late_and_without_either_only_the_hours_count()
    {
        Assert.Equal(Pressure.OnTime, Pressures.Of(Court.Racket(1, 30) with { Promised = Court.At(80) }, Court.At(80)));
        Assert.Equal(Pressure.Late, Pressures.Of(Court.Racket(1, 30) with { Promised = Court.At(80) }, Court.At(81)));
        Assert.Equal(Pressure.None, Pressures.Of(Court.Racket(1, 30), Court.At(70)));
        Assert.Equal(Pressure.Late, Pressures.Of(Court.Racket(1, 30), null));
    }
}
