using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Codes that open nothing: mistyped, unknown, not in use yet, no longer in use.</summary>
public sealed class WrongCodeTests : IDisposable
{
    /// <summary>The right one ends in V, by the check value published beside the standard's formula.</summary>
    private const string Mistyped = "7K2M9Q4TXAW";

    private readonly TestShop _shop = new();

    public WrongCodeTests() => _shop.Records.Shop();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Mistyped_code_sends_one_back_to_the_tag_and_shows_what_was_typed()
    {
        var page = await _shop.Stranger().Open("/t/" + Mistyped);

        Assert.Equal(HttpStatusCode.NotFound, page.Status);
        Assert.Equal("Check the tag again", page.Document.QuerySelector("h1")!.TextContent);
        Assert.Equal(Mistyped, page.Document.QuerySelector("input[name=code]")!.GetAttribute("value"));
    }

    [Theory]
    [InlineData("7K2M-9Q4T-XAV")]
    [InlineData("hello")]
    [InlineData("%3Cscript%3Ealert(1)%3C%2Fscript%3E")]
    public async Task Unknown_code_gets_a_page_that_helps(string typed)
    {
        var page = await _shop.Stranger().Open("/t/" + typed);

        Assert.Equal(HttpStatusCode.NotFound, page.Status);
        Assert.Equal("No racket has this code", page.Document.QuerySelector("h1")!.TextContent);
        Assert.NotNull(page.Document.QuerySelector("form[method=get][action='/t'] input[name=code]"));
        Assert.Contains("+44 20 7946 0182", page.Main, StringComparison.Ordinal);
        Assert.Empty(page.Document.QuerySelectorAll("script"));
    }

    [Fact]
    public async Task Very_long_code_is_shown_cut()
    {
        var page = await _shop.Stranger().Open("/t/" + new string('A', 3000));

        Assert.Equal(HttpStatusCode.NotFound, page.Status);
        Assert.DoesNotContain(new string('A', 41), page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tag_not_in_use_yet_says_so_and_only_the_owner_can_link_it()
    {
        var blank = _shop.Records.BlankTag();

        var stranger = await _shop.Stranger().Open("/t/" + blank);
        var owner = await _shop.Owner().Open("/t/" + blank);

        Assert.Equal(HttpStatusCode.NotFound, stranger.Status);
        Assert.Equal("This tag is not in use yet", stranger.Main.Trim());
        Assert.Equal($"/shop/tags/link/{blank}", owner.Document.QuerySelector("main a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Retired_tag_shows_the_shop_and_nothing_of_the_racket()
    {
        var (_, _, racket, _, _) = _shop.Records.Family();
        var retired = _shop.Records.RetiredTag(racket);

        var page = await _shop.Stranger().Open("/t/" + retired);

        Assert.Equal(HttpStatusCode.Gone, page.Status);
        Assert.Contains("no longer in use", page.Main, StringComparison.Ordinal);
        Assert.Contains("+44 20 7946 0182", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("tape", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("Heron", page.Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Get($"/t/{retired}/restring.ics")).StatusCode);
    }

    [Fact]
    public async Task Typed_code_leads_to_its_racket()
    {
        var code = _shop.Records.Family().Tag;
        var stranger = _shop.Stranger();
        var form = await stranger.Open("/t");

        Assert.Equal("get", form.Document.QuerySelector("form")!.GetAttribute("method"));
        Assert.Equal("/t/" + code, (await stranger.Open("/t?code=" + Uri.EscapeDataString(code.Display.ToLowerInvariant()))).Location);
        Assert.Equal("/t/" + code, (await stranger.Open("/t?code=" + Uri.EscapeDataString($"HTTPS://TAG.EXAMPLE/T/{code}"))).Location);
        Assert.False(form.Response.Headers.Contains("Set-Cookie"));
    }

    [Theory]
    [InlineData(Mistyped, "Check the tag again: one character is different there.")]
    [InlineData("hello", "A code has eleven letters and digits, for example 7K2M-9Q4T-XAV.")]
    [InlineData("", "A code has eleven letters and digits, for example 7K2M-9Q4T-XAV.")]
    [InlineData("//evil.example", "A code has eleven letters and digits, for example 7K2M-9Q4T-XAV.")]
    public async Task Typed_code_that_does_not_read_is_kept_with_what_to_do_about_it(string typed, string advice)
    {
        var page = await _shop.Stranger().Open("/t?code=" + Uri.EscapeDataString(typed));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal([advice], page.Errors);
        Assert.Equal(typed, page.Document.QuerySelector("input[name=code]")!.GetAttribute("value") ?? "");
    }
}
