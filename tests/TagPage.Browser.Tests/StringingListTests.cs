using Microsoft.Playwright;

namespace TagPage.Browser.Tests;

/// <summary>An old list on a phone, from the file to jobs on file and back.</summary>
public sealed class StringingListTests(DemoStage stage) : IClassFixture<DemoStage>
{
    private const string List = """
        Client;Racket;Date;String;Tension;Remark
        Tamsin Vell;Pellmore Meadow 98;01/02/2025;Marrow Line;52/50;likes it loud
        Tamsin Vell;Pellmore Meadow 98;01/02/2025;Marrow Line;16x19;
        Odalys Ferran;Dunmarrow Causeway;never;Marrow Line;52;
        """;

    [Fact]
    public async Task Runa_brings_an_old_list_in_and_takes_it_back()
    {
        await using var runa = await Journey.Phone(stage);
        await runa.SignIn();
        await runa.Go("/shop/import/list");
        await runa.Page.GetByLabel("List", new() { Exact = true }).SetInputFilesAsync(new FilePayload { Name = "old list.csv", MimeType = "text/csv", Buffer = System.Text.Encoding.UTF8.GetBytes(List) });
        await runa.Press("Read the list");
        await Look(runa, "columns");
        await runa.Choose("Sport", "tennis");
        await runa.Press("Go on");
        await runa.Reads("01/02/2025 may be 1 Feb 2025 or 2 Jan 2025");
        await Look(runa, "asked");
        await runa.Choose("Order of its days", "day, month, year");
        await runa.Fill("Where the tension is not known, write down", "51");
        await runa.Press("Go on");
        await Look(runa, "check");
        await runa.Press("Bring them in");
        await Look(runa, "open");
        await runa.Choose("Material", "polyester");
        await runa.Fill("Gauge", "1.25");
        await runa.Page.Locator("#racket-0").SelectOptionAsync("several");
        await runa.Press("Bring them in");
        await Assertions.Expect(runa.Page.Locator("h1")).ToHaveTextAsync("The list is in", new() { Timeout = OneBrowser.Patience });
        await runa.Reads("2 jobs on file");
        await Look(runa, "in");
        await runa.Press("Take the whole list back");
        await Assertions.Expect(runa.Page.Locator("h1")).ToHaveTextAsync("The list was taken back", new() { Timeout = OneBrowser.Patience });
        await runa.Go("/shop/import/list");
        await runa.Reads("taken back");
        await Look(runa, "lists");
    }

    private static async Task Look(Journey person, string name)
    {
        if (Environment.GetEnvironmentVariable("SHOTS") is { } shots)
        {
            await person.Page.ScreenshotAsync(new() { Path = $"{shots}/{name}.png", FullPage = true });
            await person.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
            await person.Page.SetViewportSizeAsync(1280, 800);
            await person.Page.ScreenshotAsync(new() { Path = $"{shots}/{name}-wide.png", FullPage = true });
            await person.Page.SetViewportSizeAsync(360, 640);
            await person.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        }
        await person.FitsTheScreen();
        await person.BeginsWithItsMainHeading();
        await person.HasNoAxeViolation();
    }
}
