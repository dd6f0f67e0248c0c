using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

/// <summary>The ways to make a link are those of RFC 3986 (schemes) and common practice of mail programs (bare hosts, addresses).</summary>
public sealed class UnclickableTests
{
    [Theory]
    [InlineData("http://evil.example", "http[:]//evil[.]example")]
    [InlineData("HTTPS://EVIL.EXAMPLE/a?b=c", "HTTPS[:]//EVIL[.]EXAMPLE/a?b=c")]
    [InlineData("evil.example", "evil[.]example")]
    [InlineData("a-b.co.uk", "a-b[.]co[.]uk")]
    [InlineData("пример.рф", "пример[.]рф")]
    [InlineData("evil．example", "evil[.]example")]
    [InlineData("tel:+15550100", "tel[:]+15550100")]
    [InlineData("javascript:alert(1)", "javascript[:]alert(1)")]
    [InlineData("x@evil.example", "x[at]evil[.]example")]
    [InlineData("http://203.0.113.9/x", "http[:]//203.0.113.9/x")]
    [InlineData("ev\u200Bil.example", "evil[.]example")]
    [InlineData("\u202Eelpmaxe.live", "elpmaxe[.]live")]
    public void Nothing_that_could_be_an_address_stays_one(string typed, string shown) => Assert.Equal(shown, Unclickable.Of(typed));

    [Theory]
    [InlineData("It is at the desk. Ask at 14:30, court 3.")]
    [InlineData("Um 14.30 Uhr am 12.11.2026, danke!")]
    [InlineData("Note: under the bench…")]
    [InlineData("受付にあります。18時まで。")]
    [InlineData("{answer 7} {link}")]
    [InlineData("Family 👨‍👩‍👧 waves")]
    public void Plain_words_stay_as_they_were(string typed) => Assert.Equal(typed, Unclickable.Of(typed));
}
