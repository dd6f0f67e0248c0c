using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

/// <summary>Weights and ranges after RFC 9110, 12.5.4; regions fall back to their language after RFC 4647, 3.4.</summary>
public class AcceptLanguageTests
{
    [Theory]
    [InlineData("fr", "fr")]
    [InlineData("FR", "fr")]
    [InlineData("zh-TW", "zh")]
    [InlineData("zh-Hant-HK", "zh")]
    [InlineData("pt-BR,pt;q=0.9,en;q=0.8", "pt")]
    [InlineData("de-CH", "de")]
    [InlineData("da, en-gb;q=0.8, en;q=0.7", "en")]
    [InlineData("en;q=0.5, ja;q=0.9", "ja")]
    [InlineData("nl, it;q=0.1", "it")]
    [InlineData("es ; q=0.3 , fr ; q=0.4", "fr")]
    [InlineData("it, es", "it")]
    [InlineData("fr;q=1.000, de;q=0.999", "fr")]
    public void The_wanted_language_is_chosen_by_weight_then_by_order(string header, string expected) =>
        Assert.Equal(expected, AcceptLanguage.Choose(header).Code);

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("*")]
    [InlineData("nl, sv;q=0.5")]
    [InlineData("fr;q=0")]
    [InlineData("*;q=0.5, fr;q=0")]
    public void Nothing_of_ours_means_English(string? header) => Assert.Equal("en", AcceptLanguage.Choose(header).Code);

    [Theory]
    [InlineData(";;;,,,")]
    [InlineData("fr;q=banana")]
    [InlineData("fr;q=-1")]
    [InlineData("fr;q=2")]
    [InlineData("fr;q=NaN")]
    [InlineData("fr;q=1e-1")]
    [InlineData("fr;level=1")]
    [InlineData("-fr")]
    [InlineData("f-r")]
    [InlineData("\0\u202E日本語")]
    public void Garbage_means_English(string header) => Assert.Equal("en", AcceptLanguage.Choose(header).Code);

    [Fact]
    public void One_range_in_garbage_is_still_understood() => Assert.Equal("de", AcceptLanguage.Choose("fr;q=x,;,de;q=0.2,*").Code);

    [Fact]
    public void Ten_kilobytes_are_read_only_at_their_beginning()
    {
        Assert.Equal("es", AcceptLanguage.Choose("es," + new string('x', 10_240)).Code);
        Assert.Equal("es", AcceptLanguage.Choose("es;q=0.1," + string.Concat(Enumerable.Repeat("nl,", 3_400)) + "fr").Code);
    }
}
