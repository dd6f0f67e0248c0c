using TagPage.Core.Customising;
using TagPage.Core.Units;

namespace TagPage.Core.Tests.Customising;

public class BalancePointTests
{
    // Recomputed independently with NumPy; below zero is head heavy.
    [Theory]
    [InlineData(68.58, 32.0, 7.2126)]
    [InlineData(68.58, 33.5, 2.4882)]
    [InlineData(68.58, 35.0, -2.2362)]
    public void Points_are_eighths_of_an_inch_from_the_middle(double length, double balance, double points)
    {
        Assert.Equal(points, BalancePoint.Points(balance, length), 4);
        Assert.Equal(balance, BalancePoint.FromPoints(BalancePoint.Points(balance, length), length), 9);
    }

    // Recomputed independently with NumPy, from the weights after mass was added.
    [Theory]
    [InlineData(32.0, 7.212598)]
    [InlineData(33.145161, 3.605791)]
    [InlineData(32.5, 5.637795)]
    [InlineData(32.765372, 4.801977)]
    public void Points_before_and_after_added_mass(double balance, double points) =>
        Assert.Equal(points, BalancePoint.Points(balance, 68.58), 5);

    [Fact]
    public void Frame_of_27_inches_that_balances_at_12_and_a_half_is_8_points_head_light()
    {
        // Brody, Cross, Lindsey, The Physics and Technology of Tennis, 2002.
        Assert.Equal(8, BalancePoint.Points(12.5 * 2.54, 27 * 2.54), 9);
    }

    [Fact]
    public void Two_scales_find_the_balance()
    {
        // Recomputed independently with NumPy: 165 g of 350 g on 27 in is 12.728571 in, 6.171429 points head light.
        var balance = BalancePoint.FromTip(165, 350, 27 * 2.54);

        Assert.Equal(12.728571, balance / 2.54, 6);
        Assert.Equal(6.171429, BalancePoint.Points(balance, 27 * 2.54), 6);
    }

    [Theory]
    [InlineData("325", BalanceUnit.Mm, "325")]
    [InlineData("32.5", BalanceUnit.Cm, "325")]
    [InlineData("12.5", BalanceUnit.In, "317.5")]
    [InlineData("8", BalanceUnit.Points, "317.5")]
    [InlineData("-4", BalanceUnit.Points, "355.6")]
    public void Balance_is_read_in_every_unit(string value, BalanceUnit unit, string mm) =>
        Assert.Equal(Number(mm), new Balance(Number(value), unit).Mm(685.8m));

    [Fact]
    public void Points_on_a_frame_of_unknown_length_say_nothing() => Assert.Null(new Balance(8, BalanceUnit.Points).Mm(null));

    [Fact]
    public void Weights_and_lengths_convert_exactly_and_back()
    {
        Assert.Equal(311.844754375m, new Weight(11, WeightUnit.Oz).Grams);
        Assert.Equal(11m, new Weight(311.844754375m, WeightUnit.G).In(WeightUnit.Oz));
        Assert.Equal(68.58m, new Distance(27, LengthUnit.In).In(LengthUnit.Cm));
        Assert.Equal(27m, new Distance(68.58m, LengthUnit.Cm).In(LengthUnit.In));
        Assert.Equal(12.3m, new Distance(12.3m, LengthUnit.In).In(LengthUnit.In));
    }

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
