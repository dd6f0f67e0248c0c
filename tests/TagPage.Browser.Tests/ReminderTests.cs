using Microsoft.Playwright;
using TagPage.Records.DueDates;
using TagPage.Records.Outbox;
using TagPage.Web.Start.Demo;
using TagPage.Web.Words;

namespace TagPage.Browser.Tests;

/// <summary>A restring reminder from the due list to the bench, and its end, on a phone without JavaScript.</summary>
public sealed class ReminderTests(DemoStage stage) : IClassFixture<DemoStage>
{
    [Theory]
    [InlineData("en")]
    [InlineData("ja")]
    public async Task Yes_to_a_reminder_waits_as_a_ticket_at_the_bench(string code)
    {
        var (household, link) = await Remind();
        var say = Languages.Of(code)!.Phrases.Reminder;
        await using var client = await Journey.Phone(stage, javaScript: false);
        await client.Go($"{link}?lang={code}");
        await client.FitsTheScreen();
        await Assertions.Expect(client.Page.GetByLabel(say.Strings).First).Not.ToBeVisibleAsync();

        await client.Page.GetByLabel(say.Different, new() { Exact = true }).First.CheckAsync();
        await client.Page.GetByLabel(say.Strings).First.FillAsync("softer ones " + code);
        await client.Press(say.Send);

        await client.Reads(say.Saved);
        Assert.Contains("lang=" + code, client.Page.Url, StringComparison.Ordinal);
        Assert.DoesNotContain(await client.Page.Context.CookiesAsync(), c => !c.Name.EndsWith("form", StringComparison.Ordinal));
        await using var runa = await Journey.Phone(stage, javaScript: false);
        await runa.SignIn();
        var job = runa.Page.Locator(".job", new() { HasText = "softer ones " + code });
        await Assertions.Expect(job).ToContainTextAsync("not brought yet");
        await Assertions.Expect(job).ToContainTextAsync(household.Rackets[0].Racket.Player);
    }

    [Theory]
    [InlineData("es")]
    [InlineData("de")]
    public async Task Stop_takes_the_household_off_the_due_list(string code)
    {
        var (household, link) = await Remind();
        var words = Languages.Of(code)!.Phrases;
        await using var client = await Journey.Phone(stage, javaScript: false);
        await client.Go($"{link}?lang={code}");

        await client.Page.GetByLabel(words.Reminder.Stop, new() { Exact = true }).CheckAsync();
        await client.Press(words.Reminder.Send);

        await client.Reads(words.Reminder.SavedStop);
        await using var runa = await Journey.Phone(stage, javaScript: false);
        await runa.SignIn();
        await runa.Go("/shop/due");
        await Assertions.Expect(runa.Page.Locator("main")).Not.ToContainTextAsync(household.Client.Client);
        await runa.Reads("want no reminders");
    }

    [Fact]
    public async Task Private_pages_pass_axe_and_fit_a_phone()
    {
        var path = stage.Get<DemoReminder>().Path()!;
        await using var client = await Journey.Phone(stage);
        foreach (var address in new[] { path, path + "?lang=de", path + "?lang=zh", "/n/1-nothing" })
        {
            await client.Go(address);
            await client.FitsTheScreen();
            await client.HasNoAxeViolation();
        }
    }

    [Fact]
    public async Task Owners_pages_about_reminders_pass_axe_and_fit_a_phone()
    {
        var reminder = LinkTokens.Claimed(stage.Get<DemoReminder>().Path()!["/n/".Length..]);
        await using var runa = await Journey.Phone(stage);
        await runa.SignIn();
        foreach (var address in new[]
        {
            "/shop/nudges", "/shop/nudges/new?client=2", $"/shop/nudges/{reminder}", $"/shop/nudges/answer/{reminder}", $"/shop/nudges/mail/{reminder}",
            $"/shop/nudges/sent/{reminder}", $"/shop/nudges/discard/{reminder}", "/shop/settings/reminders", "/shop/help/reminders", "/shop/help/mail", "/shop/due",
        })
        {
            await runa.Go(address);
            await runa.FitsTheScreen();
            await runa.HasNoAxeViolation();
        }
    }

    /// <summary>Runa reminds a household of the due list that has no reminder yet, from its Remind button; its private link is on the page.</summary>
    private async Task<(Household Household, string Link)> Remind()
    {
        var household = stage.Get<DueStore>().List(withUnseen: false).Households.First(h => h.Client.ReminderId is null);
        await using var runa = await Journey.Phone(stage, javaScript: false);
        await runa.SignIn();
        await runa.Go("/shop/due");
        await runa.Follow("Remind " + household.Client.Client);
        await runa.Press("Make the reminder");
        var link = await runa.Page.GetByLabel("Whoever has it can answer for the household").InputValueAsync();
        return (household, new Uri(link).PathAndQuery);
    }
}
