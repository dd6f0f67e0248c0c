using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

/// <summary>2,450 pence, cents or yen.</summary>
public sealed class MoneyWordsTests
{
    // Unicode CLDR has where each language puts sign and number.
    [Theory]
    [InlineData("en", "GBP", "£24.50")]
    [InlineData("fr", "GBP", "24,50 £")]
    [InlineData("de", "EUR", "24,50 €")]
    [InlineData("es", "EUR", "24,50 €")]
    [InlineData("it", "EUR", "24,50 €")]
    [InlineData("ja", "GBP", "£24.50")]
    [InlineData("zh", "GBP", "£24.50")]
    [InlineData("en", "KWD", "2.450 KWD")]
    [InlineData("en", "EUR", "€24.50")]
    [InlineData("fr", "EUR", "24,50 €")]
    [InlineData("en", "SEK", "24.50 kr")]
    public void Amount_stands_as_the_reader_writes_it(string language, string currency, string expected) =>
        Assert.Equal(expected, Languages.Of(language)!.Money(2450, currency).Replace('\u00A0', ' ').Replace('\u202F', ' '));

    [Fact]
    public void Yen_have_no_part() =>
        Assert.Matches("^.2,450$", Languages.Of("ja")!.Money(2450, "JPY"));

    [Fact]
    public void Every_currency_is_written_in_every_language() =>
        Assert.All(Currencies.All, currency => Assert.All(Languages.All, language => Assert.Matches(@"\d", language.Money(2450, currency))));
}
