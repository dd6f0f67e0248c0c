using Microsoft.Playwright;
using TagPage.Records.Events;
using TagPage.Records.Storage;

namespace TagPage.Browser.Tests;

/// <summary>The big screen and a helper's tablet at one event, each in a browser of its own.</summary>
public sealed class EventDeskTests(DemoStage stage) : IClassFixture<DemoStage>
{
    [Fact]
    public async Task Board_follows_a_tablet_and_a_tablet_that_was_away_says_so_keeps_what_was_typed_and_catches_up()
    {
        await using var screen = await Journey.Desk(stage);
        await screen.SignIn();
        await screen.Go("/desk/1/board");
        var next = screen.Page.Locator("[aria-labelledby=next]");
        await Assertions.Expect(next).Not.ToContainTextAsync("1");

        await using var tablet = await Journey.Phone(stage);
        await tablet.Go("/desk/enter/" + stage.Get<EventSessionStore>().Token(stage.Get<EventStore>().Get(Who.Shop, 1)!));
        await tablet.Press("Join the desk");
        await tablet.Follow("Take in");
        await tablet.Follow("A new player");
        await tablet.Page.GetByRole(AriaRole.Textbox, new() { Name = "Name", Exact = true }).FillAsync("Tove Alling");
        await tablet.Fill("Tension, mains", "52");
        await tablet.Page.GetByLabel("Mains", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await tablet.Press("Take it in");
        await tablet.Reads("Number 1: promised for");

        await Assertions.Expect(next.Locator("b")).ToHaveTextAsync(["1"]);
        Assert.DoesNotContain("Tove", await screen.Page.ContentAsync(), StringComparison.Ordinal);

        await tablet.Follow("Take in");
        await tablet.Follow("A new player");
        var promise = tablet.Page.Locator("form [data-live]");
        var before = await promise.InnerTextAsync();
        await tablet.Page.GetByRole(AriaRole.Textbox, new() { Name = "Name", Exact = true }).FillAsync("Ilse Marrow");
        await tablet.Fill("Tension, mains", "51");
        await tablet.Page.GetByLabel("Mains", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Index = 1 });
        BusyDesk.TakeIn(stage, "Edda Brink", null);
        BusyDesk.TakeIn(stage, "Edda Brink", null);
        await Assertions.Expect(promise).Not.ToHaveTextAsync(before);
        await tablet.Page.RouteAsync("**/in/visitor", route => route.AbortAsync("internetdisconnected"));
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Take it in", Exact = true }).ClickAsync();
        await Assertions.Expect(tablet.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("What you typed is still here");
        await Assertions.Expect(tablet.Page.GetByRole(AriaRole.Alert)).ToBeInViewportAsync();
        await Assertions.Expect(tablet.Page.GetByLabel("Tension, mains")).ToHaveValueAsync("51");
        await tablet.Page.UnrouteAsync("**/in/visitor");
        await tablet.Press("Take it in");
        await tablet.Reads("Number 4: promised for");
        Assert.Equal(4, stage.Get<DeskStore>().Get(Who.Shop, 1)!.Entries.Count);

        await tablet.Go("/desk/1");
        var state = tablet.Page.Locator("[data-live-state]");
        await Assertions.Expect(state).ToBeHiddenAsync();
        await tablet.Page.EvaluateAsync("() => window.dispatchEvent(new Event('offline'))");
        await Assertions.Expect(state).ToContainTextAsync("Not live since");
        BusyDesk.TakeIn(stage, "Edda Brink", null);
        await Assertions.Expect(tablet.Page.GetByRole(AriaRole.Link, new() { Name = "5", Exact = true })).ToBeVisibleAsync();
        await Assertions.Expect(state).ToBeHiddenAsync();
        await Assertions.Expect(next.Locator("b")).ToHaveTextAsync(["1", "2", "3", "4", "5"]);
    }
}
