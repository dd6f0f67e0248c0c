using TagPage.Core.Forecast;
using TagPage.Records.Shop;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class SettingsTests : IDisposable
{
    private readonly TestShop _shop = new();

    private ShopDetails Shop => _shop.Get<ShopStore>().Get();

    public void Dispose() => _shop.Dispose();

    private async Task<Visitor> OwnerOfAShop()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open("/shop/settings/shop"), ("Input.Name", "Ferrygate Bench"));
        return owner;
    }

    [Fact]
    public async Task Owner_says_who_the_shop_is_and_public_pages_follow()
    {
        var owner = await OwnerOfAShop();

        var answer = await owner.Send(await owner.Open("/shop/settings/shop"), ("Input.Phone", "020 7946 0182"), ("Input.Town", "Eastmere"),
            ("Input.TimeZone", "Asia/Tokyo"), ("Input.Currency", "JPY"), ("Input.TensionUnit", "Kg"), ("Input.UnseenMonths", "6"));

        Assert.Equal("/shop/settings", answer.Location);
        Assert.Equal(("+442079460182", "Eastmere", "Asia/Tokyo", "JPY", 6), (Shop.Phone, Shop.Town, Shop.TimeZone, Shop.Currency, Shop.UnseenMonths));
        Assert.Contains("Eastmere", (await _shop.Stranger().Open("/")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Other_currency_is_asked_about_once_where_amounts_are_on_file()
    {
        var owner = await OwnerOfAShop();
        _shop.Records.Family();
        _shop.Records.Change("INSERT INTO charge (job_id, kind, words, amount_minor, tax_bp) SELECT id, 'Labour', '', 1800, 0 FROM job LIMIT 1");

        var asked = await owner.Send(await owner.Open("/shop/settings/shop"), ("Input.Currency", "CHF"));

        Assert.Contains("are in GBP and would all read as CHF", asked.Main, StringComparison.Ordinal);
        Assert.Equal("GBP", Shop.Currency);
        Assert.Equal("/shop/settings", (await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!))).Location);
        Assert.Equal("CHF", Shop.Currency);
    }

    [Theory]
    [InlineData("Input.Name", "", "Enter the shop’s name as your clients know it.")]
    [InlineData("Input.Phone", "12", "This does not look like a phone number. Enter it with its area code, or with + and the country code.")]
    [InlineData("Input.Mail", "bench", "Enter an email address like name@example.org.")]
    [InlineData("Input.TimeZone", "Mars/Olympus", "Choose a time zone from the list.")]
    [InlineData("Input.Country", "XX", "Choose a country from the list.")]
    [InlineData("Input.Language", "xx", "Choose a language from the list.")]
    [InlineData("Input.Currency", "XXX", "Choose a currency from the list.")]
    [InlineData("Input.UnseenMonths", "0", "Enter a number of months between 1 and 120.")]
    public async Task Nonsense_about_the_shop_is_refused_at_its_field(string field, string typed, string sentence)
    {
        var owner = await OwnerOfAShop();
        var before = Shop;

        var answer = await owner.Send(await owner.Open("/shop/settings/shop"), (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(before, Shop);
    }

    [Theory]
    [InlineData("/shop/settings/shop")]
    [InlineData("/shop/settings/page")]
    [InlineData("/shop/settings/lives")]
    [InlineData("/shop/settings/lives/reset")]
    [InlineData("/shop/settings/tension")]
    public async Task Second_of_two_people_at_the_settings_is_told(string path)
    {
        var owner = await OwnerOfAShop();
        var form = await owner.Open(path);
        await owner.Send(await owner.Open("/shop/settings/shop"), ("Input.Town", "Eastmere"));

        var told = await owner.Send(form);

        Assert.Contains("Somebody else saved this record", told.Main, StringComparison.Ordinal);
        Assert.Equal("Eastmere", Shop.Town);
    }

    [Fact]
    public async Task Changed_string_life_moves_the_forecast_and_can_be_reset()
    {
        var owner = await OwnerOfAShop();

        await owner.Send(await owner.Send(await owner.Open("/shop/settings/lives"), ("Input.Tennis.Polyester", "12,5"), ("Input.DueSoonDays", "7")));
        Assert.Equal((12.5, 7), (Shop.StartingValues.Tennis.Polyester.LifeHours, Shop.StartingValues.DueSoon.Days));
        await owner.Send(await owner.Open("/shop/settings/lives/reset"));

        Assert.Equal(StartingValues.Default, Shop.StartingValues);
    }

    [Fact]
    public async Task Starting_values_saved_as_they_are_stay_the_products_own()
    {
        var owner = await OwnerOfAShop();

        await owner.Send(await owner.Open("/shop/settings/lives"));

        Assert.Null(_shop.Database.Read(c => Dapper.SqlMapper.ExecuteScalar<string>(c, "SELECT starting_values FROM shop")));
    }

    [Theory]
    [InlineData("Input.Tennis.Polyester", "0", "Enter a number of hours between 1 and 500.")]
    [InlineData("Input.Squash.ReferenceGaugeMm", "12", "Enter a diameter between 0.5 and 2 mm.")]
    [InlineData("Input.Hard", "", "Enter a factor between 0.25 and 4.")]
    [InlineData("Input.LastOneIn", "11", "Enter a whole number between 1 and 10.")]
    public async Task String_lives_out_of_range_are_refused_at_their_field(string field, string typed, string sentence)
    {
        var owner = await OwnerOfAShop();

        var answer = await owner.Send(await owner.Open("/shop/settings/lives"), (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(StartingValues.Default, Shop.StartingValues);
    }

    [Fact]
    public async Task Page_is_shown_first_without_saving_and_then_saved()
    {
        var owner = await OwnerOfAShop();
        var form = await owner.Open("/shop/settings/page");

        var preview = await owner.Send(form, ("Input.HomeMarkdown", "**Bring** it in"), ("Input.Accent", "#FFEE00"), ("Preview", "true"));
        Assert.Equal("Bring", preview.Document.QuerySelector(".prose strong")!.TextContent);
        Assert.Contains("adjusted so that it can be read", preview.Main, StringComparison.Ordinal);
        Assert.Equal(("", null), (Shop.HomeMarkdown, Shop.Accent));
        await owner.Send(preview);

        Assert.Equal(("**Bring** it in", "#FFEE00"), (Shop.HomeMarkdown, Shop.Accent));
    }

    [Theory]
    [InlineData("green")]
    [InlineData("#12345G")]
    [InlineData("#FFF")]
    public async Task Accent_that_is_no_colour_is_refused(string typed)
    {
        var owner = await OwnerOfAShop();

        var answer = await owner.Send(await owner.Open("/shop/settings/page"), ("Input.Accent", typed));

        Assert.Contains("like #1E5B49", Assert.Single(answer.Errors), StringComparison.Ordinal);
        Assert.Null(Shop.Accent);
    }

    [Fact]
    public async Task Address_page_shows_what_labels_will_carry()
    {
        var page = await _shop.Owner().Open("/shop/settings/address");

        Assert.Contains("https://tag.example", page.Main, StringComparison.Ordinal);
        Assert.Contains("HTTPS://TAG.EXAMPLE/T/", page.Main, StringComparison.Ordinal);
    }
}
