using Microsoft.Playwright;
using TagPage.Records.Accounts;

namespace TagPage.Browser.Tests;

public sealed class FirstDayTests(Stage stage) : IClassFixture<Stage>
{
    [Fact]
    public async Task Owner_sets_the_shop_up_fills_the_catalogue_and_a_stranger_finds_the_shop()
    {
        await using var runa = await Journey.Desk(stage);
        await runa.Go("/account/set-up/" + stage.Get<SetUpStore>().NewToken());
        await runa.HasNoAxeViolation();
        await runa.Fill("Name of the shop", "Heron Lane Strings");
        await runa.Fill("Sign-in name", Stage.OwnerName);
        await runa.Fill("Password", Stage.OwnerPassword);
        await runa.Page.GetByLabel("Country").SelectOptionAsync("GB");
        await runa.Page.GetByLabel("Time zone").SelectOptionAsync("Europe/London");
        await runa.Page.GetByLabel("Currency").SelectOptionAsync("GBP");
        await runa.Press("Set up the shop");

        await runa.Go("/shop/strings/new");
        await runa.HasNoAxeViolation();
        await runa.Fill("Name", "Heron Spin");
        await runa.Choose("Material", "polyester");
        await runa.Fill("Gauge", "1,25");
        await runa.Press("Save the string");
        await runa.Reads("Heron Spin is in the catalogue.");
        await runa.HasNoAxeViolation();

        await using var stranger = await Journey.Phone(stage, javaScript: false, ColorScheme.Dark);
        await stranger.Go("/");
        await stranger.Reads("Heron Lane Strings");
        await stranger.FitsTheScreen();
        await stranger.Go("/t");
        await stranger.Fill("The code on the tag", "hello");
        await stranger.Press("Show the racket");
        await stranger.Reads("tag");
        await stranger.FitsTheScreen();
        Assert.Empty(await stranger.Page.Context.CookiesAsync());
    }
}
