using System.Net;
using TagPage.Core.Forecast;
using TagPage.Records.Players;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class PlayerTests : IDisposable
{
    private readonly TestShop _shop = new();

    private PlayerStore Store => _shop.Get<PlayerStore>();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_adds_a_junior_under_the_guardian()
    {
        var client = _shop.Records.Client("Odalys Ferran");
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/players/new?client={client}"),
            ("Input.Name", "Pim"), ("Input.Junior", "true"), ("Input.TimesAWeek", "2,5"), ("Input.HoursATime", "1.5"));

        Assert.Equal($"/shop/clients/{client}#player-1", answer.Location);
        var saved = Store.Get(1)!;
        Assert.Equal((client, "Pim", true, 2.5m, 1.5m, null), (saved.ClientId, saved.Name, saved.Junior, saved.TimesAWeek, saved.HoursATime, saved.Rule));
    }

    [Theory]
    [InlineData("Input.TimesAWeek", "22", "Enter 0 to 21 times a week.")]
    [InlineData("Input.HoursATime", "9", "Enter 0 to 8 hours.")]
    [InlineData("Input.EveryWeeks", "0", "Enter 1 to 104 weeks.")]
    [InlineData("Input.EveryWeeks", "6.5", "Enter a whole number here, like 16.")]
    [InlineData("Input.EveryWeeks", "", "Enter the number of weeks.")]
    public async Task Nonsense_is_refused_at_its_field(string field, string typed, string sentence)
    {
        var client = _shop.Records.Client("Odalys Ferran");
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/players/new?client={client}"),
            ("Input.Name", "Pim"), ("Input.Rule", "EveryWeeks"), ("Input.EveryWeeks", "6"), (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(typed, answer.Document.QuerySelector($"[name='{field}']")!.GetAttribute("value"));
        Assert.Null(Store.Get(1));
    }

    [Fact]
    public async Task Rule_of_a_player_is_changed_and_taken_back_to_the_start_rule()
    {
        var player = _shop.Records.Player(_shop.Records.Client("Odalys Ferran"), "Pim");
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/players/edit/{player}"), ("Input.Rule", "EveryWeeks"), ("Input.EveryWeeks", "6"));
        Assert.Equal((RestringRule.EveryWeeks, 6), (Store.Get(player)!.Rule, Store.Get(player)!.EveryWeeks));

        await owner.Send(await owner.Open($"/shop/players/edit/{player}"), ("Input.Rule", ""));

        Assert.Null(Store.Get(player)!.Rule);
    }

    [Theory]
    [InlineData("/shop/players/new?client=99")]
    [InlineData("/shop/players/new")]
    [InlineData("/shop/players/edit/99")]
    [InlineData("/shop/clients/99")]
    [InlineData("/shop/clients/edit/99")]
    [InlineData("/shop/payers/edit/99")]
    public async Task Unknown_records_are_not_found(string path) =>
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get(path)).StatusCode);
}
