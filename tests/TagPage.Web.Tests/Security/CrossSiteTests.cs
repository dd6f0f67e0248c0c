using System.Net;
using System.Security.Cryptography;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>What other web pages make a visitor's browser ask for; the headers are those of W3C's Fetch Metadata.</summary>
public sealed class CrossSiteTests : IDisposable
{
    private const string Club = "198.51.100.9";

    private readonly TestShop _shop = new();
    private readonly TagCode _code;

    public CrossSiteTests()
    {
        _shop.Records.Shop();
        _code = _shop.Records.Family().Tag;
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Images_with_wrong_codes_on_another_web_page_lock_nobody_out()
    {
        var browser = Browser("cross-site", "image");
        for (var n = 0; n < 400; n++)
            Assert.Equal(HttpStatusCode.Forbidden, (await browser.Get("/t/" + TagCode.Draw(RandomNumberGenerator.Fill))).StatusCode);

        Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger(Club).Get("/t/" + _code)).StatusCode);
    }

    [Theory]
    [InlineData("image", "")]
    [InlineData("iframe", "")]
    [InlineData("empty", "")]
    [InlineData("script", "/restring.ics")]
    [InlineData("object", "/found")]
    public async Task Right_code_is_told_to_another_web_page_as_little_as_a_wrong_one(string dest, string rest)
    {
        await _shop.Stranger().Get("/t/" + _code);
        var answers = new List<string>();
        foreach (var code in new[] { _code, TagCode.Draw(RandomNumberGenerator.Fill) })
        {
            var page = await Browser("cross-site", dest).Open("/t/" + code + rest);
            answers.Add($"{page.Status} {page.Text}");
            Assert.Contains("nosniff", page.Response.Headers.GetValues("X-Content-Type-Options"));
        }

        Assert.Equal(["Forbidden ", "Forbidden "], answers);
    }

    [Theory]
    [InlineData("cross-site", "document")]
    [InlineData("none", "document")]
    [InlineData("same-origin", "image")]
    [InlineData("same-origin", "empty")]
    public async Task Links_and_the_shops_own_pages_are_let_through(string site, string dest) =>
        Assert.Equal(HttpStatusCode.OK, (await Browser(site, dest).Get("/t/" + _code)).StatusCode);

    [Fact]
    public async Task Link_with_a_wrong_code_on_another_web_page_is_counted()
    {
        var browser = Browser("cross-site", "document");
        for (var n = 0; n < 300; n++)
            await browser.Get("/t/" + TagCode.Draw(RandomNumberGenerator.Fill));

        Assert.Equal(HttpStatusCode.TooManyRequests, (await _shop.Stranger(Club).Get("/t/" + _code)).StatusCode);
    }

    private Visitor Browser(string site, string dest)
    {
        var visitor = _shop.Stranger(Club);
        visitor.Client.DefaultRequestHeaders.Add("Sec-Fetch-Site", site);
        visitor.Client.DefaultRequestHeaders.Add("Sec-Fetch-Dest", dest);
        return visitor;
    }
}
