using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>The owner says whose alphabet it is, and every list follows.</summary>
public sealed class NameOrderTests : IDisposable
{
    private readonly TestShop _shop = new();

    public NameOrderTests()
    {
        _shop.Records.Shop();
        foreach (var name in new[] { "Åsa Bergman", "Zita Czerny", "Ewa Łukasik", "Adam Zorn" })
            _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client(name), name));
    }

    public void Dispose() => _shop.Dispose();

    private static string Names(WebPage page) => string.Join(' ', page.Document.QuerySelectorAll("tbody th").Select(e => e.TextContent.Split(' ')[0]));

    [Fact]
    public async Task Owner_chooses_language_and_family_names_and_the_list_of_clients_follows()
    {
        var owner = _shop.Owner();
        Assert.Equal("Adam Åsa Ewa Zita", Names(await owner.Open("/shop/clients")));

        Assert.Equal("/shop/settings", (await owner.Send(await owner.Open("/shop/settings/shop"), ("Input.NamesIn", "sv"))).Location);
        Assert.Equal("Adam Ewa Zita Åsa", Names(await owner.Open("/shop/clients")));

        await owner.Send(await owner.Open("/shop/settings/shop"), ("Input.ByLastWord", "True"));
        Assert.Equal("Åsa Zita Ewa Adam", Names(await owner.Open("/shop/clients")));
        Assert.Equal("True", (await owner.Open("/shop/settings/shop")).Document.QuerySelector("[name='Input.ByLastWord'] option[selected]")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Family_name_before_a_comma_reads_as_a_name_and_stays_one_when_the_form_is_saved_again()
    {
        var owner = _shop.Owner();
        var saved = await owner.Send(await owner.Open("/shop/clients/new"), ("Input.Name", "García Márquez, Ana"));
        var edit = saved.Location!.Replace("/shop/clients/", "/shop/clients/edit/", StringComparison.Ordinal);
        await owner.Send(await owner.Open(edit), ("Input.Note", "rings at nine"));

        Assert.Equal("Ana García\u00A0Márquez|rings at nine", _shop.Records.Text("SELECT name || '|' || note FROM client WHERE note = 'rings at nine'"));
        Assert.Contains("Ana García", (await owner.Open((await owner.Open("/shop/find?q=marquez")).Location!)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Search_finds_letters_that_the_keyboard_lacks()
    {
        var owner = _shop.Owner();

        var only = (await owner.Open("/shop/find?q=lukasik")).Location!;
        Assert.Contains("Ewa Łukasik", (await owner.Open(only)).Main, StringComparison.Ordinal);
        Assert.Equal(only, (await owner.Open("/shop/find?q=%C5%81ukasik")).Location);
    }

    [Fact]
    public async Task Language_that_is_none_is_refused()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open("/shop/settings/shop"), ("Input.NamesIn", "qq"));

        Assert.Equal((HttpStatusCode.OK, "Choose a language from the list."), (answer.Status, Assert.Single(answer.Errors)));
        Assert.Equal(0, _shop.Records.Count("shop", "names_in IS NOT NULL"));
    }
}
