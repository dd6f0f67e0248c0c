using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>What clients ask for: all of it can be seen and ticked off, however much it is.</summary>
public sealed class ClientRequestTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Visitor _runa;

    public ClientRequestTests()
    {
        _shop.Records.Shop();
        var client = _shop.Records.Family().Client;
        _shop.Records.Change("""
            WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 130)
            INSERT INTO client_request (client_id, kind, words, made_at) SELECT @client, 'Payer', 'wish ' || i || '.', '2026-11-25T09:00:00.000Z' FROM n
            """, new { client });
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Bench_counts_all_shows_the_oldest_and_leads_to_the_rest_page_by_page()
    {
        var bench = await _runa.Open("/shop");
        Assert.Equal("130", bench.Document.QuerySelector("#asked .count")!.TextContent);
        Assert.Contains("wish 1.", bench.Main, StringComparison.Ordinal);

        var (path, seen) = (bench.Document.QuerySelector("a[href='/shop/corner/requests']")?.GetAttribute("href"), new List<string>());
        while (path is not null && seen.Count <= 130)
        {
            var page = await _runa.Open(path);
            seen.AddRange(page.Document.QuerySelectorAll("main li.racket span").Select(s => s.TextContent));
            path = page.Document.QuerySelector("nav[aria-label=Pages] a[rel=next]")?.GetAttribute("href");
        }

        Assert.Equal(Enumerable.Range(1, 130).Select(n => $"Odalys Ferran says about who pays: “wish {n}.”"), seen);
    }

    [Fact]
    public async Task What_is_ticked_off_on_the_list_goes_and_the_list_is_shown_again()
    {
        var page = await _runa.Open("/shop/corner/requests?after=100");
        var form = page.Document.QuerySelectorAll<IHtmlFormElement>("main form").Single(f => f.QuerySelector("[name=id][value='101']") is not null);

        Assert.Equal("/shop/corner/requests", (await _runa.Send(page, form)).Location);

        Assert.DoesNotContain("wish 101.", (await _runa.Open("/shop/corner/requests?after=100")).Main, StringComparison.Ordinal);
        Assert.Equal(129, _shop.Records.Count("client_request", "done_at IS NULL"));
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("many")]
    [InlineData("99999999999999999999")]
    public async Task Page_that_nobody_gave_out_is_the_first(string after)
    {
        var page = await _runa.Open($"/shop/corner/requests?after={after}");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("wish 1.", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task List_without_wishes_says_so()
    {
        _shop.Records.Change("DELETE FROM client_request");

        Assert.Contains("Nobody is asking for anything", (await _runa.Open("/shop/corner/requests")).Main, StringComparison.Ordinal);
    }
}
