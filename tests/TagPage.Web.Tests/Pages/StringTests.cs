using System.Net;
using TagPage.Records.Storage;
using TagPage.Records.Strings;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class StringTests : IDisposable
{
    private readonly TestShop _shop = new();

    private StringStore Store => _shop.Get<StringStore>();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_adds_a_string_and_finds_it_in_the_catalogue()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/strings/new");

        var answer = await owner.Send(form, ("Input.Name", "Heron Spin"), ("Input.Material", "Polyester"), ("Input.GaugeMm", "1,25"));

        Assert.Equal("/shop/strings", answer.Location);
        var list = await owner.Open("/shop/strings");
        Assert.Contains("Heron Spin is in the catalogue.", list.Main, StringComparison.Ordinal);
        Assert.Equal(1.25m, Assert.Single(Store.List()).GaugeMm);
    }

    [Fact]
    public async Task Form_sent_twice_makes_one_string()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/strings/new");
        (string, string)[] fields = [("Input.Name", "Heron Spin"), ("Input.Material", "Polyester"), ("Input.GaugeMm", "1.25")];

        await owner.Send(form, fields);
        var second = await owner.Send(form, fields);

        Assert.Equal("/shop/strings", second.Location);
        Assert.Single(Store.List());
    }

    [Theory]
    [InlineData("Input.Name", "", "Enter the string’s name.")]
    [InlineData("Input.GaugeMm", "thick", "Enter a number here, like 24.5, not “thick”.")]
    [InlineData("Input.GaugeMm", "12.5", "Enter a diameter between 0.5 and 1.6 mm.")]
    public async Task Nonsense_is_refused_at_its_field_and_nothing_typed_is_lost(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/strings/new");

        var answer = await owner.Send(form,
            [("Input.Name", "Heron Spin"), ("Input.Material", "Polyester"), ("Input.GaugeMm", "1.25"), ("Input.Note", "blue reel"), (field, typed)]);

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(typed, answer.Document.QuerySelector($"[name='{field}']")!.GetAttribute("value"));
        Assert.Equal("blue reel", answer.Document.QuerySelector("textarea")!.TextContent);
        Assert.Empty(Store.List());
    }

    [Fact]
    public async Task Second_of_two_people_editing_a_string_is_told_and_may_then_replace_it()
    {
        Store.Add(Who.Shop, new StringEntry { FormKey = FormKey.New(), Name = "Heron", Material = Core.Strings.Material.Polyester, GaugeMm = 1.25m });
        var (first, second) = (_shop.Owner(), _shop.Owner());
        var firstForm = await first.Open("/shop/strings/edit/1");
        var secondForm = await second.Open("/shop/strings/edit/1");
        await first.Send(firstForm, ("Input.Name", "Heron Spin"));

        var told = await second.Send(secondForm, ("Input.Name", "Heron Soft"));

        Assert.Contains("Somebody else saved this record", told.Main, StringComparison.Ordinal);
        Assert.Equal("Heron Spin", Store.Get(1)!.Name);
        await second.Send(told);
        Assert.Equal("Heron Soft", Store.Get(1)!.Name);
    }

    [Fact]
    public async Task String_taken_out_of_the_offer_stays_out()
    {
        Store.Add(Who.Shop, new StringEntry { FormKey = FormKey.New(), Name = "Heron", Material = Core.Strings.Material.Polyester, GaugeMm = 1.25m });
        var owner = _shop.Owner();

        await owner.Send(await owner.Open("/shop/strings/edit/1"), ("Input.Offered", "false"));

        Assert.False(Store.Get(1)!.Offered);
        await owner.Send(await owner.Open("/shop/strings/edit/1"));
        Assert.False(Store.Get(1)!.Offered);
        await owner.Send(await owner.Open("/shop/strings/edit/1"), ("Input.Offered", "true"));
        Assert.True(Store.Get(1)!.Offered);
    }

    [Fact]
    public async Task Unknown_string_is_not_found()
    {
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get("/shop/strings/edit/99")).StatusCode);
    }
}
