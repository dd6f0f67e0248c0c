using Microsoft.Playwright;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Storage;

namespace TagPage.Browser.Tests;

/// <summary>From drop-off to paid with the keyboard alone, and with a finger alone.</summary>
public sealed class BenchTests(DemoStage stage) : IClassFixture<DemoStage>
{
    private const int MostTabs = 80;

    /// <summary>A finger needs that much, in CSS pixels (WCAG 2.2, 2.5.5).</summary>
    private const int Finger = 44;

    [Fact]
    public async Task Racket_goes_from_drop_off_to_paid_by_the_keyboard_alone()
    {
        await using var runa = await Journey.Desk(stage);
        await runa.SignIn();
        await runa.Go("/shop");
        var keys = runa.Page.Keyboard;

        await Key(runa, "n");
        await runa.Reads("New job: which racket?");
        await Assertions.Expect(runa.Page.Locator("#q")).ToBeFocusedAsync();
        await keys.TypeAsync("Niamh");
        await keys.PressAsync("Enter");
        await runa.Reads("New job: Niamh");
        await TabTo(runa.Page, "Save the job");
        await keys.PressAsync("Enter");
        await runa.Reads("is waiting at the bench");
        var ticket = await runa.Page.Locator("h1 .number").InnerTextAsync();

        await Key(runa, "m");
        await runa.Reads($"Ticket {ticket} is on the machine.");
        await Key(runa, "u");
        await runa.Reads($"Ticket {ticket} is waiting again.");
        await runa.Page.WaitForLoadStateAsync(LoadState.DOMContentLoaded);
        await StepTo(runa.Page, ticket);
        await Key(runa, "m");
        await runa.Reads($"Ticket {ticket} is on the machine.");
        await Key(runa, "m");
        await runa.Reads("Reading right after stringing");
        await keys.PressAsync("Enter");
        await runa.Reads($"Ticket {ticket} is strung.");
        await Key(runa, "m");
        await runa.Reads("Collected on");
        await TabTo(runa.Page, "Handed out, paid in cash");
        await keys.PressAsync("Enter");
        await runa.Reads($"Ticket {ticket} is handed out and paid.");
    }

    [Fact]
    public async Task Keys_move_over_the_rows_where_the_focus_is_seen_and_leave_fields_alone()
    {
        await using var runa = await Journey.Desk(stage);
        await runa.SignIn();
        await runa.Go("/shop");
        var keys = runa.Page.Keyboard;
        Task<string> Focused() => runa.Page.EvaluateAsync<string>("document.activeElement.textContent");
        var tickets = await runa.Page.Locator("[data-rows] .job .no").AllInnerTextsAsync();
        Assert.True(tickets.Count >= 3);

        await keys.PressAsync("j");
        await keys.PressAsync("ArrowDown");
        Assert.Equal(tickets[1], await Focused());
        Assert.NotEqual("none", await runa.Page.EvaluateAsync<string>("getComputedStyle(document.activeElement).outlineStyle"));
        await keys.PressAsync("k");
        await keys.PressAsync("ArrowUp");
        Assert.Equal(tickets[0], await Focused());

        await keys.PressAsync("?");
        await Assertions.Expect(runa.Page.GetByText("next ticket, the one before")).ToBeVisibleAsync();
        await keys.PressAsync("/");
        await keys.TypeAsync("jkmun?");
        await Assertions.Expect(runa.Page.Locator("[data-find]")).ToHaveValueAsync("jkmun?");
        await runa.Page.Locator("h1").ClickAsync();
        await keys.PressAsync("Control+j");
        Assert.NotEqual(tickets[0], await Focused());
        Assert.EndsWith("/shop", runa.Page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Keys_that_are_turned_off_do_nothing()
    {
        await using var runa = await Journey.Desk(stage);
        await runa.SignIn();
        try
        {
            await Set(runa, on: false);
            await runa.Go("/shop");
            foreach (var key in new[] { "j", "n", "/" })
                await runa.Page.Keyboard.PressAsync(key);

            Assert.Equal("BODY", await runa.Page.EvaluateAsync<string>("document.activeElement.tagName"));
            Assert.EndsWith("/shop", runa.Page.Url, StringComparison.Ordinal);
        }
        finally
        {
            await Set(runa, on: true);
        }
    }

    [Fact]
    public async Task Households_rackets_go_from_drop_off_to_paid_by_touch_alone()
    {
        await using var runa = await Journey.Phone(stage);
        await runa.SignIn();
        var client = stage.Get<TogetherStore>();
        await runa.Go("/shop/clients/2");
        await Tap(runa, AriaRole.Link, "New jobs");
        await runa.Reads("Together, as ticked");
        await runa.FitsTheScreen();
        await Tap(runa, AriaRole.Button, "Save all jobs");
        await runa.Reads("are waiting at the bench.");
        await runa.FitsTheScreen();
        var waiting = client.Get(Who.Shop, Party.Client(2))!.Waiting.ToList();
        Assert.True(waiting.Count >= 3);

        foreach (var job in waiting)
        {
            await runa.Go("/shop");
            await Tap(runa, AriaRole.Button, $"Start ticket {job.Ticket}");
            await runa.Reads("is on the machine.");
            await Tap(runa, AriaRole.Link, "Mark as strung");
            await Tap(runa, AriaRole.Button, "Mark as strung");
            await runa.Reads("is strung.");
        }
        await runa.Go("/shop/jobs/together/client/2");
        await Tap(runa, AriaRole.Link, $"Hand out all {waiting.Count}, ");
        await Tap(runa, AriaRole.Button, "Handed out, paid by card");
        await runa.Reads($"{waiting.Count} rackets are handed out and paid.");
        Assert.Empty(client.Get(Who.Shop, Party.Client(2))!.Ready);

        await Tap(runa, AriaRole.Button, "Undo");
        await runa.Reads("are strung again. What was paid stays noted.");
        Assert.Equal(waiting.Count, client.Get(Who.Shop, Party.Client(2))!.Ready.Count());
    }

    /// <summary>Once the page listens.</summary>
    private static async Task Key(Journey person, string key)
    {
        await person.Page.WaitForLoadStateAsync(LoadState.DOMContentLoaded);
        await person.Page.Keyboard.PressAsync(key);
    }

    private static async Task Set(Journey runa, bool on)
    {
        await runa.Go("/shop/settings/bench");
        await runa.Page.GetByLabel("Single keys act").SetCheckedAsync(on);
        await runa.Press("Save");
        await runa.Reads("The bench’s settings are saved.");
    }

    private static async Task Tap(Journey person, AriaRole role, string name)
    {
        var target = person.Page.GetByRole(role, new() { Name = name }).First;
        await target.WaitForAsync();
        await person.Page.WaitForLoadStateAsync(LoadState.Load);
        var box = await target.BoundingBoxAsync();
        Assert.True(box!.Height >= Finger, $"{name} is {box.Height} pixels high");
        await target.TapAsync();
    }

    private static async Task TabTo(IPage page, string name)
    {
        for (var tabs = 0; tabs < MostTabs; tabs++)
        {
            if (await page.EvaluateAsync<string>("document.activeElement.textContent.trim()") == name)
                return;
            await page.Keyboard.PressAsync("Tab");
        }
        Assert.Fail($"No Tab leads to {name}.");
    }

    private static async Task StepTo(IPage page, string ticket)
    {
        for (var steps = 0; steps < MostTabs; steps++)
        {
            await page.Keyboard.PressAsync("j");
            if (await page.EvaluateAsync<string>("document.activeElement.textContent") == ticket)
                return;
        }
        Assert.Fail($"No key leads to ticket {ticket}.");
    }
}
