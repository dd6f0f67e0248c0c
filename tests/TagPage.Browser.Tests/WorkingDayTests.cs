using System.Text.RegularExpressions;
using Microsoft.Playwright;
using TagPage.Web.Start.Demo;

namespace TagPage.Browser.Tests;

/// <summary>The journeys of an ordinary day in the demo's shop, at phone width.</summary>
public sealed partial class WorkingDayTests(DemoStage stage) : IClassFixture<DemoStage>
{
    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Player_scans_their_racket_and_reads_the_date_on_the_first_screen_and_the_history_below(ColorScheme scheme)
    {
        await using var player = await Journey.Phone(stage, javaScript: false, scheme);
        await player.Go($"/t/{stage.Get<DemoShop>().Showcase}".ToLowerInvariant());

        await Assertions.Expect(player.Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Restring");
        await player.IsOnTheFirstScreen(player.Page.GetByRole(AriaRole.Heading, new() { Level = 1 }));
        await player.IsOnTheFirstScreen(player.Page.GetByText("because of"));
        await player.IsOnTheFirstScreen(player.Page.GetByRole(AriaRole.Link, new() { Name = "Call the shop" }));
        Assert.True(await player.Page.Locator("table.history tbody tr").CountAsync() >= 6);
        await player.FitsTheScreen();
        Assert.Empty(await player.Page.Context.CookiesAsync());
    }

    [Theory]
    [InlineData(true, "Ottoline Brask", "07700 900444")]
    [InlineData(false, "Ismene Tarquist", "07700 900445")]
    public async Task New_client_leaves_with_a_live_tag_and_strings_that_its_page_shows(bool javaScript, string client, string phone)
    {
        await using var runa = await Journey.Phone(stage, javaScript);
        await runa.SignIn();
        await FirstVisit(runa, client, phone);
        var code = CodeOnTheCard().Match(await runa.Page.Locator("main").InnerTextAsync()).Value;

        await DropOff(runa);
        await String(runa);
        await HandOut(runa);

        await using var stranger = await Journey.Phone(stage, javaScript: false);
        await stranger.Go("/t/" + code);
        await stranger.Reads("Restring");
        await stranger.Reads("52 lb");
        Assert.DoesNotContain(client.Split(' ')[0], await stranger.Page.ContentAsync(), StringComparison.OrdinalIgnoreCase);
    }

    private static async Task FirstVisit(Journey runa, string client, string phone)
    {
        await runa.Go("/shop/clients/first-visit");
        await runa.Fill("Name", client);
        await runa.Fill("Phone", phone);
        await runa.Page.GetByLabel("The client plays").CheckAsync();
        await runa.Fill("Plays", "3");
        await runa.Fill("Each time", "1,5");
        await runa.Choose("Sport", "tennis");
        await runa.Fill("Frame", "Dunmarrow Causeway 100");
        await runa.Press("Save everything");
        await runa.Reads(client);
    }

    private static async Task DropOff(Journey runa)
    {
        await runa.Follow("New job");
        await runa.Page.GetByLabel("Mains", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await runa.Fill("Tension, mains", "52");
        await runa.Unfold("price from the list");
        await runa.Fill("Price", "25,50");
        await runa.FitsTheScreen();
        await runa.Press("Save the job");
        await runa.Reads("waiting");
    }

    private static async Task String(Journey runa)
    {
        await runa.Press("Put it on the machine");
        await runa.Follow("Mark as strung");
        await runa.Press("Mark as strung");
    }

    private static async Task HandOut(Journey runa)
    {
        await runa.Follow("Hand it out");
        await runa.Press("Handed out, paid in cash");
        await runa.Reads("collected");
    }

    [GeneratedRegex("[0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{3}")]
    private static partial Regex CodeOnTheCard();
}
