using System.Net;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Pages;

public sealed class HelpTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_reads_every_page_of_the_manual_and_no_link_in_it_leads_nowhere()
    {
        var owner = _shop.Owner();
        foreach (var (name, title) in _shop.Get<Manual>().Contents.Prepend(("", "Start here")))
        {
            var address = $"/shop/help/{name}".TrimEnd('/');
            var page = await owner.Open(address);
            Assert.Equal(title, page.Document.QuerySelector("h1")!.TextContent);
            Assert.True(page.Document.QuerySelector(".manual")!.TextContent.Length > 200, name + " is all but empty.");
            foreach (var link in page.Document.QuerySelectorAll(".manual a[href]").Select(a => a.GetAttribute("href")!))
                Assert.Equal(HttpStatusCode.OK, (await owner.Get(new Uri(new Uri("https://localhost" + address), link).PathAndQuery)).StatusCode);
        }
    }

    [Fact]
    public async Task Unknown_page_of_the_manual_is_not_found()
    {
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get("/shop/help/..%2FREADME")).StatusCode);
    }
}
