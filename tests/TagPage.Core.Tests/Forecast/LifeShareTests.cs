using TagPage.Core.Forecast;

namespace TagPage.Core.Tests.Forecast;

public class LifeShareTests
{
    [Theory]
    [InlineData(1, LifeShare.All)]
    [InlineData(0.99, LifeShare.NearlyAll)]
    [InlineData(0.76, LifeShare.ThreeQuarters)]
    [InlineData(0.65, LifeShare.TwoThirds)]
    [InlineData(0.5, LifeShare.Half)]
    [InlineData(0.35, LifeShare.Third)]
    [InlineData(0.26, LifeShare.Quarter)]
    [InlineData(0.12, LifeShare.Tenth)]
    [InlineData(0.01, LifeShare.HardlyAny)]
    [InlineData(0, LifeShare.None)]
    [InlineData(-3, LifeShare.None)]
    [InlineData(7, LifeShare.All)]
    [InlineData(double.NaN, LifeShare.None)]
    public void What_is_left_goes_to_the_nearest_common_fraction(double lifeLeft, LifeShare expected) =>
        Assert.Equal(expected, LifeShares.Of(lifeLeft));
}
