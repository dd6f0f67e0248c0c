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
        await runa.Press("Work it out");
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
