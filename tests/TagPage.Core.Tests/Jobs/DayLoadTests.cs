using TagPage.Core.Jobs;

namespace TagPage.Core.Tests.Jobs;

/// <summary>Hand-worked: three rackets of 30, 45 and 20 minutes, one after the other.</summary>
public sealed class DayLoadTests
{
    private static readonly (int, bool)[] Three = [(30, true), (45, true), (20, true)];

    [Theory]
    [InlineData(0, 0)]
    [InlineData(29, 0)]
    [InlineData(30, 1)]
    [InlineData(74, 1)]
    [InlineData(75, 2)]
    [InlineData(94, 2)]
    [InlineData(95, 3)]
    public void Rackets_fit_one_after_the_other(int left, int fit)
    {
        var load = DayLoad.Of(Three, left);

        Assert.Equal((3, fit, 95, left), (load.Promised, load.Fit, load.Needed, load.Left));
    }

    [Fact]
    public void Racket_on_the_machine_that_is_promised_for_later_takes_its_time_and_is_no_promise()
    {
        var load = DayLoad.Of([(30, false), (45, true)], 74);

        Assert.Equal((1, 0, 75), (load.Promised, load.Fit, load.Needed));
    }

    [Fact]
    public void Short_one_behind_a_long_one_does_not_jump_the_queue()
    {
        Assert.Equal(0, DayLoad.Of([(60, true), (5, true)], 30).Fit);
    }
}
