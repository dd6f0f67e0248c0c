using Microsoft.Playwright;
using TagPage.Web.Start.Demo;

namespace TagPage.Browser.Tests;

/// <summary>Back after a corrected mistake, without JavaScript: the browser shows the page and does not ask whether to send the form again.</summary>
public sealed class BackTests(DemoStage stage) : IClassFixture<DemoStage>
{
    [Fact]
    public async Task Finder_and_owner_go_back_over_a_corrected_form()
    {
        await using var finder = await Journey.Phone(stage, javaScript: false);
        await finder.Go($"/t/{stage.Get<DemoShop>().Lost}/found");
        await finder.Fill("Your message", "   ");
        await finder.Press("Send the message");
        await finder.Reads("Write a message before you send it.");
        await finder.Fill("Your message", "It is in the hall.");
        await finder.Press("Send the message");
        await finder.Reads("Thank you");

        await GoesBackTo(finder, "Write a message before you send it.");

        await using var runa = await Journey.Desk(stage);
        await runa.SignIn();
        await runa.Go("/shop/payers/new");
        await runa.Press("Save the payer");
        await Assertions.Expect(runa.Page.Locator(".errors")).ToBeVisibleAsync();
        await runa.Fill("Name", "Eastmere Academy");
        await runa.Press("Save the payer");
        await runa.Reads("Eastmere Academy");

        await GoesBackTo(runa, "Not saved yet");
    }

    private static async Task GoesBackTo(Journey person, string text)
    {
        await person.Page.GoBackAsync();
        await person.Reads(text);
    }
}
