using TagPage.Core.Units;

namespace TagPage.Core.Tests.Units;

public class UnitTests
{
    [Fact]
    public void Factors_are_those_of_the_yard_and_pound_agreement_and_standard_gravity()
    {
        // International yard and pound, 1959; BIPM, SI brochure, for standard gravity. 16 ounces are a pound.
        Assert.Equal(4.4482216152605m, Factors.NewtonsPerLbf);
        Assert.Equal(1000 * Factors.KgPerLb, 16 * Factors.GramsPerOunce);
        Assert.Equal(304.8m, 12 * Factors.MmPerInch);
    }

    // Recomputed independently with NumPy from 1 lb = 0.45359237 kg.
    [Theory]
    [InlineData(24, TensionUnit.Lb, 10.886217)]
    [InlineData(52, TensionUnit.Lb, 23.586803)]
    [InlineData(60, TensionUnit.Lb, 27.215542)]
    [InlineData(11, TensionUnit.Kg, 24.250849)]
    [InlineData(28, TensionUnit.Kg, 61.729433)]
    public void A_tension_converts_to_the_other_unit(int value, TensionUnit unit, double expected)
    {
        var other = unit == TensionUnit.Lb ? TensionUnit.Kg : TensionUnit.Lb;
        Assert.Equal((decimal)expected, Math.Round(new Tension(value, unit).In(other), 6));
        Assert.Equal(value, new Tension(value, unit).In(unit));
    }

    [Theory]
    [InlineData("24", TensionUnit.Lb, "24 lb", "10.9 kg")]
    [InlineData("24.50", TensionUnit.Lb, "24.5 lb", "11.1 kg")]
    [InlineData("11.2", TensionUnit.Kg, "11.2 kg", "24.5 lb")]
    [InlineData("25", TensionUnit.Kg, "25 kg", "55 lb")]
    public void A_tension_is_shown_as_entered_with_the_other_unit_in_machine_steps(
        string value, TensionUnit unit, string shown, string other)
    {
        var tension = new Tension(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture), unit);
        Assert.Equal(shown, tension.ToString());
        Assert.Equal(other, tension.Other.ToString());
    }

    [Fact]
    public void A_tension_is_written_with_a_point_wherever_the_server_stands()
    {
        var before = Thread.CurrentThread.CurrentCulture;
        try
        {
            Thread.CurrentThread.CurrentCulture = new System.Globalization.CultureInfo("de-CH");
            Thread.CurrentThread.CurrentCulture.NumberFormat.NumberDecimalSeparator = ",";
            Assert.Equal("24.5 lb", new Tension(24.5m, TensionUnit.Lb).ToString());
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    [Fact]
    public void The_squash_limit_of_500_square_centimetres_is_77_5_square_inches()
    {
        // World Squash rules, racket appendix: strung area at most 500 cm².
        Assert.Equal(77.500155m, Math.Round(HeadSize.ToSquareInches(500), 6));
        Assert.Equal(645.16m, HeadSize.ToSquareCm(100));
    }
}
