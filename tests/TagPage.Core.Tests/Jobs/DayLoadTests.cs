using TagPage.Core.Jobs;

namespace TagPage.Core.Tests.Jobs;

/// <summary>Hand-worked: three rackets of 30, 45 and 20 minutes, one after the other.</summary>
public sealed class DayLoadTests
{
    private static readonly int[] Three = [30, 45, 20];

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
    public void Short_one_behind_a_long_one_does_not_jump_the_queue()
    {
        Assert.Equal(0, DayLoad.Of([60, 5], 30).Fit);
    }
}
