using System.Net;
using TagPage.Records.Shop;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>The cast's own shop was started with https://tag.example.</summary>
public sealed class UsedAddressTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    private UsedAddressStore Started(string at)
    {
        var store = new UsedAddressStore(_shop.Database, _shop.Clock);
        store.Note(at);
        _shop.Clock.Advance(TimeSpan.FromDays(1));
        return store;
    }

    [Fact]
    public void Every_address_that_was_set_is_remembered_and_the_present_one_is_not_an_earlier_one()
    {
        Started("https://first.example");
        Started("https://second.example");
        Started("https://first.example");

        var now = Started("https://third.example");

        Assert.Equal(["https://first.example", "https://second.example", "https://tag.example"], now.EarlierThan("https://third.example").Select(a => a.Base));
        Assert.Equal(TimeSpan.FromDays(2), now.EarlierThan("https://third.example")[0].LastAt - now.EarlierThan("https://third.example")[0].FirstAt);
    }

    [Fact]
    public async Task Owner_reads_which_addresses_must_keep_leading_here()
    {
        Started("https://old.example");

        var page = await _shop.Owner().Open("/shop/settings/address");

        Assert.Contains("https://old.example", page.Main, StringComparison.Ordinal);
        Assert.Contains("25 Nov 2026", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Address_that_only_this_machine_knew_is_not_among_those_to_keep()
    {
        Started("http://localhost:5080");
        Started("http://127.0.0.1:5081");
        Started("https://old.example");

        var page = await _shop.Owner().Open("/shop/settings/address");

        Assert.Contains("https://old.example", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("http://localhost:5080", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("127.0.0.1", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tag_scanned_under_an_earlier_address_opens_without_a_redirect()
    {
        var tag = _shop.Records.Family().Tag;
        Started("https://old.example");

        var page = await _shop.Stranger("198.51.100.7", "https://old.example").Open("/T/" + tag);

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("Restring", page.Main, StringComparison.Ordinal);
    }
}
