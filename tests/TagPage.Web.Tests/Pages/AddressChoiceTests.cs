using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Microsoft.AspNetCore.Http;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>The owner chooses the web address in the browser, where no setting names one.</summary>
public sealed class AddressChoiceTests : IDisposable
{
    private const string Page = "/shop/settings/address";

    /// <summary>Nobody listens at port 1 of this machine.</summary>
    private const string Nowhere = "https://127.0.0.1:1";

    private readonly TestShop _shop = new() { Settings = { ["TagPage:Address"] = "" } };

    private readonly Visitor _owner;

    public AddressChoiceTests()
    {
        _shop.Records.Shop();
        _owner = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Address_is_used_everywhere_at_once_after_it_was_said_that_it_is_for_life()
    {
        var link = _shop.MakesOwnPageLink(_shop.Records.Family().Client);
        var asked = await Type(Nowhere);
        Assert.Contains("for life", asked.Main, StringComparison.Ordinal);
        Assert.Contains("Nothing answers there", asked.Main, StringComparison.Ordinal);
        Assert.False(_shop.Get<PublicAddress>().IsConfigured);

        var saved = await Confirm(asked);

        Assert.Equal(Page, saved.Location);
        Assert.Equal(Nowhere, _shop.Get<PublicAddress>().Base);
        Assert.Contains("HTTPS://127.0.0.1:1/T/", (await _owner.Open(Page)).Main, StringComparison.Ordinal);
        Assert.Contains(Nowhere + "/my/", (await _owner.Open($"/shop/corner/link/{link}")).Text, StringComparison.Ordinal);
        Assert.Contains(Nowhere, (await _shop.Stranger().Open("/.well-known/security.txt")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task This_very_program_is_recognised_at_the_other_end()
    {
        await using var door = await LoopbackDoor.Into(_shop);

        var asked = await Type(door.Address);
        await Confirm(asked);
        var again = await _owner.Open(Page);
        var check = await _owner.Send(again with { Path = Page + "?handler=check" }, again.Document.QuerySelector<IHtmlFormElement>("form.row")!);

        Assert.Contains("It answers, and it is this program.", asked.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing answers", asked.Main, StringComparison.Ordinal);
        Assert.Contains("others on the network can read what you send", asked.Main, StringComparison.Ordinal);
        Assert.Contains("It answers, and it is this program.", check.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Program_that_only_repeats_what_it_is_asked_is_another_one()
    {
        await using var door = await LoopbackDoor.Open(context => context.Response.WriteAsync(context.Request.Query["ask"]!));

        Assert.Contains("it is not this program", (await Type(door.Address)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Endless_answer_is_not_read_to_its_end()
    {
        await using var door = await LoopbackDoor.Open(context => context.Response.WriteAsync(new string('a', 1_000_000)));

        Assert.Contains("it is not this program", (await Type(door.Address)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Redirect_is_told_and_not_followed()
    {
        await using var other = await LoopbackDoor.Into(_shop);
        await using var door = await LoopbackDoor.Open(context =>
        {
            context.Response.Redirect(other.Address + context.Request.Path + context.Request.QueryString);
            return Task.CompletedTask;
        });

        var asked = await Type(door.Address);

        Assert.Contains("It sends visitors on to another address.", asked.Main, StringComparison.Ordinal);
        Assert.Equal((1, 0), (door.Calls, other.Calls));
    }

    [Fact]
    public async Task Change_says_how_many_tags_carry_the_old_address_and_is_asked_about_again()
    {
        await Confirm(await Type(Nowhere));
        _shop.Records.Family();
        _shop.Records.BlankTag();
        _shop.Records.BlankTag();

        var asked = await Type("https://127.0.0.1:2");

        Assert.Contains($"1 tag in use and 2 tags not linked yet carry {Nowhere} for life", asked.Main, StringComparison.Ordinal);
        Assert.Equal(Nowhere, _shop.Get<PublicAddress>().Base);
        await Confirm(asked);
        Assert.Equal("https://127.0.0.1:2", _shop.Get<PublicAddress>().Base);
        Assert.Equal([Nowhere], _shop.Get<UsedAddressStore>().EarlierThan("https://127.0.0.1:2").Select(a => a.Base));
    }

    [Theory]
    [InlineData("")]
    [InlineData("tag.example")]
    [InlineData("ftp://tag.example")]
    [InlineData("https://tag.example/shop")]
    [InlineData("https://tag.example?x=1")]
    [InlineData("https://runa@tag.example")]
    [InlineData("file:///etc/passwd")]
    [InlineData("https://under_score.example")]
    public async Task What_labels_cannot_carry_is_refused_without_a_call(string typed)
    {
        var refused = await Type(typed);

        Assert.Single(refused.Errors);
        Assert.False(_shop.Get<PublicAddress>().IsConfigured);
    }

    [Fact]
    public async Task Letters_of_other_scripts_are_kept_in_the_form_that_every_browser_knows()
    {
        await Confirm(await Type("HTTP://Bücher.invalid:80/"));

        Assert.Equal("http://xn--bcher-kva.invalid", _shop.Get<PublicAddress>().Base);
    }

    [Fact]
    public async Task Setting_of_the_program_wins_and_the_page_says_so()
    {
        using var shop = new TestShop();
        shop.Records.Shop();
        shop.Get<AddressStore>().Choose(Who.Shop, "https://chosen.example");
        var owner = shop.Owner();
        var page = await owner.Open(Page);
        var before = shop.Database.Dump();
        var form = page.Document.QuerySelector<IHtmlFormElement>("form.row")!;
        form.SetAttribute("action", Page);

        var refused = await owner.Send(page, form, ("Input.Address", "https://new.example"), ("Input.Confirmed", "x"));

        Assert.Equal("https://tag.example", shop.Get<PublicAddress>().Base);
        Assert.Contains("which overrules what is chosen here", page.Main, StringComparison.Ordinal);
        Assert.Null(page.Document.QuerySelector("[name='Input.Address']"));
        Assert.Equal(System.Net.HttpStatusCode.NotFound, refused.Status);
        Assert.Equal(before, shop.Database.Dump());
    }

    [Theory]
    [InlineData("/healthz/this")]
    [InlineData("/healthz/this?ask=")]
    [InlineData("/healthz/this?ask=0123456789ABCDEF0123456789ABCDEF")]
    [InlineData("/healthz/this?ask=0123456789abcdef0123456789abcdef0")]
    public async Task Nothing_is_proven_that_the_program_would_not_ask(string path) =>
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await _shop.Stranger().Get(path)).StatusCode);

    private async Task<WebPage> Type(string address)
    {
        var page = await _owner.Open(Page);
        return await _owner.Send(page, Choose(page), ("Input.Address", address));
    }

    private async Task<WebPage> Confirm(WebPage asked) =>
        await _owner.Send(asked, Choose(asked), ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));

    private static IHtmlFormElement Choose(WebPage page) => page.Document.QuerySelector<IHtmlFormElement>("form.form")!;
}
