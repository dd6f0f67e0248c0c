using Microsoft.Playwright;

namespace TagPage.Browser.Tests;

/// <summary>A racket swings, and the space bar counts it. The browser's clock is told what time it is.</summary>
public sealed class SwingTests(DemoStage stage) : IClassFixture<DemoStage>
{
    [Fact]
    public async Task Space_bar_counts_swings_shows_how_sure_they_are_and_gives_the_swing_weight()
    {
        await using var runa = await Journey.Desk(stage);
        await runa.SignIn();
        await runa.Go("/shop/rackets/pendulum/1");
        await runa.Fill("Weight", "320");
        await runa.Fill("Balance point", "325");
        await runa.Fill("It hangs at", "0");
        await runa.Page.Locator("h1").ClickAsync();
        await runa.Page.EvaluateAsync("() => { window.now = 0; Object.defineProperty(Event.prototype, 'timeStamp', { get: () => window.now }) }");

        // One finger that bounces is no swing.
        foreach (var at in new[] { 1000, 2520, 2600, 4030, 5570, 7080, 8600, 10120, 11640, 13160 })
            await Tap(runa.Page, at);

        var status = runa.Page.Locator("[data-swings] [role=status]");
        await Assertions.Expect(status).ToContainTextAsync("8 swings, 1.52");
        await Assertions.Expect(status).ToContainTextAsync("± 0.00");
        await runa.Page.GetByText("Start again").ClickAsync();
        await runa.Page.Locator("h1").ClickAsync();
        // A finger that misses a turn does not make the others slower; the sum below counts so too.
        foreach (var at in new[] { 21000, 22520, 24040, 27080, 28600, 30120 })
            await Tap(runa.Page, at);
        await Assertions.Expect(status).ToContainTextAsync("6 swings, 1 without a tap, 1.520 ± 0.000 s each");
        await runa.Press("Work it out");
        await Assertions.Expect(runa.Page.Locator("#result ~ p").First).ToContainTextAsync("from 6 swings");
        await Assertions.Expect(runa.Page.Locator("#result")).ToContainTextAsync("42");
        await runa.Press("Keep it with a spec");
        await Assertions.Expect(runa.Page.GetByLabel("It hangs at", new() { Exact = true })).ToHaveValueAsync("0");
    }

    private static async Task Tap(IPage page, int at)
    {
        await page.EvaluateAsync("at => { window.now = at }", at);
        await page.Keyboard.PressAsync(" ");
    }
}
