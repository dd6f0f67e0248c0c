using TagPage.Records.Shop;

namespace TagPage.Records.Tests.Shop;

public sealed class CurrenciesTests
{
    // Minor units as ISO 4217 lists them.
    [Theory]
    [InlineData("GBP", 24.50, 2450)]
    [InlineData("GBP", 0, 0)]
    [InlineData("JPY", 2450, 2450)]
    [InlineData("KWD", 7.125, 7125)]
    [InlineData("GBP", 1000000, 100000000)]
    public void Amount_is_kept_in_minor_units_and_comes_back(string currency, decimal amount, long minor)
    {
        Assert.Equal(minor, Currencies.ToMinor(amount, currency));
        Assert.Equal(amount, Currencies.ToAmount(minor, currency));
    }

    [Theory]
    [InlineData("GBP", -0.01)]
    [InlineData("GBP", 24.505)]
    [InlineData("JPY", 24.5)]
    [InlineData("KWD", 7.1255)]
    [InlineData("GBP", 1000000.01)]
    [InlineData("JPY", 100000001)]
    public void Amount_that_nobody_can_pay_is_none(string currency, decimal amount) => Assert.Null(Currencies.ToMinor(amount, currency));

    [Fact]
    public void Every_country_has_a_currency_of_three_letters_once()
    {
        Assert.Equal(("GBP", "EUR", "JPY"), (Currencies.OfCountry("GB"), Currencies.OfCountry("DE"), Currencies.OfCountry("JP")));
        Assert.Null(Currencies.OfCountry(null));
        Assert.Equal(Currencies.All.Distinct(), Currencies.All);
        Assert.All(Currencies.All, code => Assert.Matches("^[A-Z]{3}$", code));
    }
}
