using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

/// <summary>2,450 pence, cents or yen.</summary>
public sealed class MoneyWordsTests
{
    // Unicode CLDR has where each language puts sign and number.
    [Theory]
    [InlineData("en", "GB", "GBP", "£24.50")]
    [InlineData("fr", "GB", "GBP", "24,50 £")]
    [InlineData("de", "DE", "EUR", "24,50 €")]
    [InlineData("es", "ES", "EUR", "24,50 €")]
    [InlineData("it", "IT", "EUR", "24,50 €")]
    [InlineData("ja", "GB", "GBP", "£24.50")]
    [InlineData("zh", "GB", "GBP", "£24.50")]
    [InlineData("en", "KW", "KWD", "2.450 KWD")]
    [InlineData("en", "GB", "EUR", "24.50 EUR")]
    [InlineData("fr", "GB", "EUR", "24,50 EUR")]
    [InlineData("en", "SE", "SEK", "24.50 kr")]
    public void Amount_stands_as_the_reader_writes_it(string language, string country, string currency, string expected) =>
        Assert.Equal(expected, Languages.Of(language)!.Money(2450, new ShopDetails { Country = country, Currency = currency }).Replace('\u00A0', ' ').Replace('\u202F', ' '));

    [Fact]
    public void Yen_have_no_part() =>
        Assert.Matches("^.2,450$", Languages.Of("ja")!.Money(2450, new ShopDetails { Country = "JP", Currency = "JPY" }));
}
