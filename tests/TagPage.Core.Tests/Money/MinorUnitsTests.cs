using TagPage.Core.Money;

namespace TagPage.Core.Tests.Money;

public sealed class MinorUnitsTests
{
    // Exponents as ISO 4217 lists them (list one, published by the maintenance agency): none for JPY and ISK, three for KWD, else two.
    [Theory]
    [InlineData("GBP", "24.50", 2450)]
    [InlineData("EUR", "0.01", 1)]
    [InlineData("CHF", "0", 0)]
    [InlineData("JPY", "2450", 2450)]
    [InlineData("ISK", "3900", 3900)]
    [InlineData("KWD", "7.125", 7125)]
    public void Amount_is_a_whole_number_of_the_currencys_smallest_unit(string currency, string typed, long minor)
    {
        var amount = decimal.Parse(typed, System.Globalization.CultureInfo.InvariantCulture);

        Assert.Equal(minor, MinorUnits.Of(amount, currency));
        Assert.Equal(amount, MinorUnits.ToAmount(minor, currency));
    }

    [Theory]
    [InlineData("GBP", "24.505")]
    [InlineData("JPY", "0.5")]
    [InlineData("KWD", "0.0001")]
    [InlineData("GBP", "1000000.01")]
    [InlineData("GBP", "79228162514264337593543950335")]
    [InlineData("GBP", "-79228162514264337593543950335")]
    public void What_nobody_can_pay_is_no_amount(string currency, string typed)
    {
        var amount = decimal.Parse(typed, System.Globalization.CultureInfo.InvariantCulture);

        Assert.Equal((null, null), (MinorUnits.Of(amount, currency), MinorUnits.OfSigned(amount, currency)));
    }

    [Fact]
    public void Discount_is_below_zero_and_a_price_is_not()
    {
        Assert.Equal(-250, MinorUnits.OfSigned(-2.50m, "GBP"));
        Assert.Null(MinorUnits.Of(-2.50m, "GBP"));
    }

    [Fact]
    public void Every_amount_of_every_kind_of_currency_comes_back_the_same()
    {
        var random = new Random(4217);
        foreach (var currency in new[] { "GBP", "JPY", "KWD" })
            for (var i = 0; i < 2000; i++)
            {
                var minor = random.NextInt64(-MinorUnits.Most, MinorUnits.Most + 1);
                Assert.Equal(minor, MinorUnits.OfSigned(MinorUnits.ToAmount(minor, currency), currency));
            }
    }
}
