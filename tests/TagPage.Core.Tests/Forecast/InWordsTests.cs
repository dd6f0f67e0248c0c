using TagPage.Core.Forecast;

namespace TagPage.Core.Tests.Forecast;

public class InWordsTests
{
    [Theory]
    [InlineData(0, "today")]
    [InlineData(1, "tomorrow")]
    [InlineData(-1, "yesterday")]
    [InlineData(2, "in 2 days")]
    [InlineData(12, "in 12 days")]
    [InlineData(20, "in 20 days")]
    [InlineData(21, "in 3 weeks")]
    [InlineData(26, "in 4 weeks")]
    [InlineData(83, "in 12 weeks")]
    [InlineData(84, "in 3 months")]
    [InlineData(182, "in 6 months")]
    [InlineData(730, "in 2 years")]
    [InlineData(3650, "in 10 years")]
    [InlineData(-9, "9 days ago")]
    [InlineData(-35, "5 weeks ago")]
    [InlineData(-400, "13 months ago")]
    [InlineData(int.MinValue, "5879490 years ago")]
    public void A_day_is_said_as_a_person_would(int daysLeft, string expected) =>
        Assert.Equal(expected, InWords.When(daysLeft));

    [Theory]
    [InlineData(1, "all left")]
    [InlineData(0.99, "nearly all left")]
    [InlineData(0.76, "about three quarters left")]
    [InlineData(0.65, "about two thirds left")]
    [InlineData(0.5, "about half left")]
    [InlineData(0.35, "about a third left")]
    [InlineData(0.26, "about a quarter left")]
    [InlineData(0.12, "about a tenth left")]
    [InlineData(0.01, "hardly any left")]
    [InlineData(0, "none left")]
    [InlineData(-3, "none left")]
    [InlineData(7, "all left")]
    [InlineData(double.NaN, "none left")]
    public void What_is_left_is_said_to_the_nearest_common_fraction(double lifeLeft, string expected) =>
        Assert.Equal(expected, InWords.Left(lifeLeft));
}
