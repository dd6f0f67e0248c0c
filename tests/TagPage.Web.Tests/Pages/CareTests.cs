using System.Net;
using TagPage.Records.Shop;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class CareTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Visitor _runa;

    public CareTests()
    {
        _shop.Records.Shop();
        _runa = _shop.Owner();
    }

    public void Dispose() => _shop.Dispose();

    private CareGuideStore Store => _shop.Get<CareGuideStore>();

    private async Task<WebPage> Write(string name, string title = "Keeping gut dry", string material = "", string text = "Wipe it. **Always.**", params (string, string)[] more) =>
        await _runa.Send(await _runa.Open("/shop/settings/care/new"),
            [("Input.Title", title), ("Input.Name", name), ("Input.ForMaterial", material), ("Input.Markdown", text), .. more]);

    [Fact]
    public async Task Stranger_reads_a_guide_without_cookie_or_markup_of_others()
    {
        await Write("natural-gut", text: "Wipe it. **Always.** <script>alert(1)</script> [x](javascript:alert(1))");

        var page = await _shop.Stranger().Open("/care/natural-gut");

        Assert.Equal("Keeping gut dry", page.Document.QuerySelector("h1")!.TextContent);
        Assert.Equal("Always.", page.Document.QuerySelector(".prose strong")!.TextContent);
        Assert.Empty(page.Document.QuerySelectorAll("script, .prose a"));
        Assert.False(page.Response.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task Guide_carries_the_language_it_was_written_in_on_a_page_in_another()
    {
        await Write("natural-gut");
        _shop.Records.Change("UPDATE shop SET language = 'it', version = version + 1");

        var page = (await _shop.Stranger().Open("/care/natural-gut?lang=es")).Document;

        Assert.Equal("es", page.DocumentElement.GetAttribute("lang"));
        Assert.Equal("it", page.QuerySelector("article")!.GetAttribute("lang"));
        Assert.Contains("Idioma de esta guía: Italiano", page.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Lingua di questa guida", (await _shop.Stranger().Open("/care/natural-gut?lang=it")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tag_page_links_the_guides_of_its_strings_first_and_no_others()
    {
        var family = _shop.Records.Family();
        var material = _shop.Records.Text("SELECT k.material FROM string_kind k JOIN job j ON j.mains_id = k.id LIMIT 1")!;
        var other = material == "NaturalGut" ? "Aramid" : "NaturalGut";
        await Write("of-others", "About others", other);
        await Write("all", "A broken string", "");
        await Write("fitting", "What you have", material);

        var page = await _shop.Stranger().Open("/t/" + family.Tag);

        Assert.Contains("A broken string (English)", (await _shop.Stranger().Open($"/t/{family.Tag}?lang=fr")).Main, StringComparison.Ordinal);
        Assert.DoesNotContain("(English)", page.Main, StringComparison.Ordinal);
        Assert.Equal(["/care/fitting", "/care/all"], page.Document.QuerySelectorAll("a[href^='/care/']").Select(a => a.GetAttribute("href")));
    }

    [Fact]
    public async Task Looking_first_saves_nothing_and_keeps_what_was_typed()
    {
        var page = await Write("natural-gut", more: ("Preview", "true"));

        Assert.Contains("Not saved yet", page.Main, StringComparison.Ordinal);
        Assert.Contains("Wipe it.", page.Document.QuerySelector("textarea")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(Store.List());
    }

    [Theory]
    [InlineData("Natural Gut", "Use lower-case letters a to z, digits and single hyphens between them, like natural-gut.")]
    [InlineData("../shop", "Use lower-case letters a to z, digits and single hyphens between them, like natural-gut.")]
    [InlineData("a--b", "Use lower-case letters a to z, digits and single hyphens between them, like natural-gut.")]
    [InlineData("", "Enter the end of its address, like natural-gut.")]
    [InlineData("taken", "Another guide already has this address. Choose a different name.")]
    public async Task Address_that_does_not_do_is_refused_beside_its_field(string name, string says)
    {
        await Write("taken");

        var page = await Write(name);

        Assert.Contains(says, page.Errors);
        Assert.Equal("taken", Assert.Single(Store.List()).Name);
    }

    [Fact]
    public async Task Form_sent_twice_makes_one_guide_and_a_stale_one_overwrites_nothing()
    {
        var form = await _runa.Open("/shop/settings/care/new");
        (string, string)[] typed = [("Input.Title", "Gut"), ("Input.Name", "gut"), ("Input.Markdown", "Dry.")];
        await _runa.Send(form, typed);
        await _runa.Send(form, typed);
        var id = Assert.Single(Store.List()).Id;
        var stale = await _runa.Open($"/shop/settings/care/edit/{id}");
        await _runa.Send(await _runa.Open($"/shop/settings/care/edit/{id}"), ("Input.Title", "Gut, dry"));

        var refused = await _runa.Send(stale, ("Input.Title", "Overwritten"));

        Assert.Contains("Somebody else saved this record", refused.Main, StringComparison.Ordinal);
        Assert.Equal("Gut, dry", Store.Get(id)!.Title);
    }

    [Fact]
    public async Task Taken_down_it_is_gone_for_everybody_and_asking_first_changes_nothing()
    {
        await Write("natural-gut");
        var id = Assert.Single(Store.List()).Id;
        var ask = await _runa.Open($"/shop/settings/care/remove/{id}");
        Assert.Equal(HttpStatusCode.OK, (await _shop.Stranger().Open("/care/natural-gut")).Status);

        await _runa.Send(ask);

        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Open("/care/natural-gut")).Status);
        Assert.Empty(Store.List());
    }
}
