using System.Net;
using System.Text;
using TagPage.Records.Labels;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class RollTests : IDisposable
{
    private readonly TestShop _shop = new();

    private RollStore Store => _shop.Get<RollStore>();

    private string Path => Store.Path(Assert.Single(Store.List()));

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Roll_is_made_in_the_background_while_its_page_tells_how_far_it_is()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/labels/rolls");

        var ordered = await owner.Send(form, ("Input.Count", "45"));
        await owner.Send(form, ("Input.Count", "45"));

        Assert.Equal(Path, ordered.Location);
        Assert.Single(Store.List());
        Store.MakeSome(20);
        var waiting = await owner.Open(Path);
        Assert.Contains("20 of 45 tags", waiting.Main, StringComparison.Ordinal);
        Assert.Equal("1", waiting.Response.Headers.GetValues("Refresh").Single());
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get($"{Path}?handler=pdf")).StatusCode);

        _shop.Get<RollMaker>().MakeAll(TestContext.Current.CancellationToken);

        var ready = await owner.Open(Path);
        Assert.Contains("45 of 45 tags", ready.Main, StringComparison.Ordinal);
        Assert.False(ready.Response.Headers.Contains("Refresh"));
        Assert.Equal(45, _shop.Records.Count("tag", "state = 'Unassigned' AND racket_id IS NULL"));
        Assert.Equal(45, Pages(await File(owner)));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("501")]
    [InlineData("many")]
    public async Task Roll_of_none_or_of_too_many_is_refused(string count)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open("/shop/labels/rolls"), ("Input.Count", count));

        Assert.Single(answer.Errors);
        Assert.Empty(Store.List());
    }

    [Fact]
    public async Task Reprint_of_a_roll_is_the_same_whatever_the_settings_are_by_then()
    {
        var owner = _shop.Owner();
        Make(12);
        var first = await File(owner);

        _shop.Get<LabelSettingsStore>().Save(Who.Shop, new LabelSettings { TapeMm = 24, Dpi = 360 });

        Assert.Equal(first, await File(owner));
    }

    [Fact]
    public async Task Code_that_retired_is_never_printed_again()
    {
        var owner = _shop.Owner();
        Make(5);
        var code = Store.Codes(1)[2];
        var family = _shop.Records.Family();
        _shop.Get<TagStore>().Link(Who.Shop, code, family.Racket);
        Assert.Equal(5, Pages(await File(owner)));

        _shop.Get<TagStore>().Retire(Who.Shop, code);

        Assert.Equal(4, Pages(await File(owner)));
        Assert.DoesNotContain(code, Store.Codes(1));
        Assert.Contains("1 retired and not printed again", (await owner.Open(Path)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stranger_who_scans_a_blank_tag_learns_only_that_it_is_not_in_use_yet()
    {
        Make(1);
        _shop.Records.Family();

        var page = await _shop.Stranger().Open($"/t/{Store.Codes(1)[0]}");

        Assert.Equal(HttpStatusCode.NotFound, page.Status);
        Assert.Contains("not in use yet", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("roll", page.Document.Body!.OuterHtml, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(page.Document.QuerySelectorAll("main a[href*='/shop']"));
    }

    [Fact]
    public async Task Owner_who_scans_a_blank_tag_links_it_in_two_taps()
    {
        Make(1);
        var family = _shop.Records.Family();
        var owner = _shop.Owner();

        var scanned = await owner.Open($"/t/{Store.Codes(1)[0]}");
        var pick = await owner.Open(scanned.Document.QuerySelector("main a.primary")!.GetAttribute("href")!);
        var confirm = await owner.Open(pick.Document.QuerySelector("ul.list a")!.GetAttribute("href")!);
        await owner.Send(confirm);

        Assert.Equal(family.Racket, _shop.Get<TagStore>().Get(Store.Codes(1)[0])!.RacketId);
    }

    private void Make(int count)
    {
        Store.Order(Who.Shop, count, new LabelSettings(), FormKey.New());
        _shop.Get<RollMaker>().MakeAll(CancellationToken.None);
    }

    private async Task<byte[]> File(Visitor owner)
    {
        var answer = await owner.Get($"{Path}?handler=pdf");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
    }

    private static int Pages(byte[] pdf) => Encoding.Latin1.GetString(pdf).Split("/Type /Page ").Length - 1;
}
