using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class HomeTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Shop_that_is_not_set_up_says_so()
    {
        var page = await _shop.Stranger().Open("/");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal("This shop is not set up yet", page.Document.QuerySelector("h1")!.TextContent);
    }

    [Fact]
    public async Task Visitor_reads_the_owners_words_and_how_to_reach_the_shop()
    {
        _shop.Records.Shop(homeMarkdown: "# Strings\n\nDone *well*.\n\n### Prices\n\nSee [the list](https://prices.example).");

        var page = await _shop.Stranger().Open("/");

        Assert.Equal("Ferrygate Racket Bench", page.Document.QuerySelector("h1")!.TextContent);
        Assert.Equal(["Strings", "Prices"], page.Document.QuerySelectorAll(".prose h2, .prose h3").Select(h => h.TextContent));
        Assert.Equal("https://prices.example", page.Document.QuerySelector(".prose a")!.GetAttribute("href"));
        Assert.Equal("tel:+44-20-7946-0182", page.Document.QuerySelector(".button")!.GetAttribute("href"));
        Assert.Equal("mailto:bench@ferrygate.example", page.Document.QuerySelector("a[href^=mailto]")!.GetAttribute("href"));
        Assert.Contains("Saturday 9:00–13:00", page.Main, StringComparison.Ordinal);
        Assert.NotNull(page.Document.QuerySelector("form[action='/t'] input[name=code]"));
        Assert.False(page.Response.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task Owners_words_carry_the_language_they_were_written_in_on_a_page_in_another()
    {
        _shop.Records.Shop(homeMarkdown: "Saiten, *gut* gespannt.");
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/shop"), ("Input.Language", "de"));

        var page = (await _shop.Stranger().Open("/?lang=fr")).Document;

        Assert.Equal("fr", page.DocumentElement.GetAttribute("lang"));
        Assert.Equal("de", page.QuerySelector(".prose")!.GetAttribute("lang"));
        Assert.Equal("de", page.QuerySelector("p.lines")!.GetAttribute("lang"));
    }
}
