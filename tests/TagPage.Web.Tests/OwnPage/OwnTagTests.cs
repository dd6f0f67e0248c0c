using System.Net;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>Odalys scans the tag of Pim's racket with the phone that she is signed in on.</summary>
public sealed class OwnTagTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _odalys, _racket;
    private TagCode _tag;
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        (_odalys, _, _racket, _tag, _) = _shop.Records.Family();
        _phone = await _shop.OnOwnPage(_odalys);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Her_own_tag_leads_straight_to_that_racket_also_in_lower_case_and_in_another_language()
    {
        await ReadsThePublicPage(_shop.Stranger());

        Assert.Equal($"/my/rackets/{_racket}", await Way(_phone, $"/t/{_tag}"));
        Assert.Equal($"/my/rackets/{_racket}", await Way(_phone, $"/t/{_tag.ToString().ToLowerInvariant()}"));
        Assert.Equal($"/my/rackets/{_racket}?lang=de", await Way(_phone, $"/t/{_tag}?lang=de"));
    }

    [Fact]
    public async Task Everybody_else_reads_the_public_page_as_it_is_kept()
    {
        var teo = await _shop.OnOwnPage(_shop.Records.Client("Teo Brandt"));

        await Way(_phone, $"/t/{_tag}");

        await ReadsThePublicPage(teo);
        await ReadsThePublicPage(_shop.Stranger());
    }

    [Fact]
    public async Task Once_signed_out_she_is_a_stranger()
    {
        _shop.Records.Change("DELETE FROM own_page_session");

        await ReadsThePublicPage(_phone);
    }

    [Fact]
    public async Task Racket_that_she_sold_and_other_addresses_below_a_tag_lead_nowhere_else()
    {
        Assert.Equal(HttpStatusCode.OK, (await _phone.Get($"/t/{_tag}/found")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _phone.Get("/t/nothing")).StatusCode);
        _shop.Records.Change("UPDATE racket SET state = 'Sold'");

        await ReadsThePublicPage(_phone);
    }

    private async Task ReadsThePublicPage(Visitor visitor)
    {
        using var answer = await visitor.Get($"/t/{_tag}");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.NotNull(answer.Headers.ETag);
        Assert.Equal(["Accept-Encoding", "Accept-Language"], answer.Headers.Vary);
    }

    private static async Task<string?> Way(Visitor visitor, string address)
    {
        using var answer = await visitor.Get(address);
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.True(answer.Headers.CacheControl!.NoStore);
        return answer.Headers.Location?.ToString();
    }
}
