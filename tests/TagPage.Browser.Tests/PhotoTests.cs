using Microsoft.Playwright;
using SkiaSharp;

namespace TagPage.Browser.Tests;

/// <summary>A racket is photographed at the counter, with a phone and at the desk.</summary>
public sealed class PhotoTests(DemoStage stage) : IClassFixture<DemoStage>
{
    private static string Photo(string folder)
    {
        using var bitmap = new SKBitmap(1200, 1600);
        bitmap.Erase(SKColors.SeaGreen);
        using var jpeg = bitmap.Encode(SKEncodedImageFormat.Jpeg, 80);
        var file = Path.Combine(folder, "racket.jpg");
        File.WriteAllBytes(file, jpeg.ToArray());
        return file;
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Runa_notes_the_condition_and_photographs_a_racket_without_scripts_too(bool javaScript)
    {
        var folder = Directory.CreateTempSubdirectory().FullName;
        await using var runa = await Journey.Phone(stage, javaScript);
        await runa.SignIn();
        await runa.Go("/shop/jobs/new?racket=1");
        await runa.Unfold("Condition");
        await runa.Choose("Grommets", "damaged");
        await runa.Fill("Grommets, in words", "two split at the top");
        await runa.Page.GetByLabel("Take a photo").SetInputFilesAsync(Photo(folder));
        await runa.Fill("Tension, mains", "79");
        await runa.Press("Save the job");
        await runa.Reads("1 photo arrived and will be saved with the job.");
        await runa.Page.Locator("[name='Input.Confirmed']").CheckAsync();
        await runa.Press("Save the job");

        await runa.Reads("grommets damaged: two split at the top");
        await runa.Page.Locator(".photos a").First.ClickAsync();
        await Assertions.Expect(runa.Page.Locator("main img")).ToHaveJSPropertyAsync("naturalWidth", 1200);
        await runa.Press("Remove this photo");

        await runa.Reads("grommets damaged: two split at the top");
        await Assertions.Expect(runa.Page.Locator(".photos")).ToHaveCountAsync(0);
        Directory.Delete(folder, recursive: true);
    }
}
