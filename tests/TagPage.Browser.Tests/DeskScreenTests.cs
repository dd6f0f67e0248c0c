using Microsoft.Playwright;
using TagPage.Records.Shop;

namespace TagPage.Browser.Tests;

/// <summary>What the desk's pages show at their size, and while somebody types.</summary>
public sealed class DeskScreenTests(DemoStage stage) : IClassFixture<DemoStage>
{
    [Fact]
    public async Task What_can_be_promised_follows_what_is_typed()
    {
        await using var desk = await Journey.Desk(stage);
        await desk.SignIn();
        await desk.Go("/desk/1/in/visitor");
        await desk.Page.GetByRole(AriaRole.Textbox, new() { Name = "Name", Exact = true }).FillAsync("Tove Alling");
        var promise = desk.Page.Locator("form [data-live]");
        var before = await promise.InnerTextAsync();

        await desk.Unfold("Fresh for the match");
        await desk.Fill("Takes", "200");
        await desk.Page.GetByLabel("Takes").BlurAsync();

        await Assertions.Expect(promise).Not.ToHaveTextAsync(before);
        await Assertions.Expect(desk.Page.GetByRole(AriaRole.Textbox, new() { Name = "Name", Exact = true })).ToHaveValueAsync("Tove Alling");
    }

    [Fact]
    public async Task Board_without_marks_says_so_and_reads_itself_again()
    {
        await using var screen = await Journey.Desk(stage);
        await screen.SignIn();
        await screen.Page.Clock.InstallAsync();
        await screen.Page.RouteAsync("**/live", route => route.FulfillAsync(new() { Status = 204 }));
        await screen.Go("/desk/1/board");
        var state = screen.Page.Locator("[data-live-state]");
        await Assertions.Expect(state).ToContainTextAsync("What you see may be old");

        // Needed before all others, so that it stands among the first however many wait.
        var number = BusyDesk.TakeIn(stage, "Ilse Marrow", stage.Get<ShopClock>().Minute.AddMinutes(5), insist: true);
        await screen.Page.Clock.FastForwardAsync(11_000);

        await Assertions.Expect(screen.Page.Locator("[aria-labelledby=next]")).ToContainTextAsync($"{number}");
        await Assertions.Expect(state).ToContainTextAsync("Read again at");
    }

    [Theory]
    [InlineData(1920, 1080)]
    [InlineData(1280, 720)]
    public async Task Full_board_fits_the_big_screen_and_its_smallest_letters_are_read_from_five_metres(int width, int height)
    {
        BusyDesk.Crowd(stage);
        await using var screen = await Journey.Desk(stage);
        await screen.Page.SetViewportSizeAsync(width, height);
        await screen.SignIn();
        await screen.Go("/desk/1/board");
        await Assertions.Expect(screen.Page.Locator("[aria-labelledby=next]")).ToContainTextAsync("more");

        Assert.Equal(height, await screen.Page.EvaluateAsync<int>("() => document.documentElement.scrollHeight"));
        // 2.8 hundredths of the width of a screen of 1.2 m, of which a capital is seven tenths: 23 mm, 16 minutes of arc at five metres.
        var smallest = await screen.Page.EvaluateAsync<double>("() => Math.min(...[...document.querySelectorAll('.board :is(h2, b, span, p)')].map(e => parseFloat(getComputedStyle(e).fontSize)))");
        Assert.True(smallest >= 0.0275 * width, $"{smallest} px of {width}");
        Assert.Equal(0, await screen.Page.EvaluateAsync<int>("() => [...document.querySelectorAll('.board section')].filter(s => s.scrollWidth > s.clientWidth).length"));
    }
}
