using Microsoft.Playwright;
using SkiaSharp;
using TagPage.Web.Start.Demo;
using ZXing;
using ZXing.Common;

namespace TagPage.Browser.Tests;

/// <summary>From the racket's card to a label whose square leads back to the racket's page.</summary>
public sealed class LabelTests(DemoStage stage) : IClassFixture<DemoStage>
{
    [Fact]
    public async Task Label_asked_for_on_the_card_scans_off_the_screen_and_opens_the_rackets_page()
    {
        await using var runa = await Journey.Phone(stage);
        await runa.SignIn();
        await runa.Go("/shop/rackets/1");
        await runa.Follow("Print a label");
        await runa.FitsTheScreen();

        var address = Scan(await Enlarged(runa.Page));

        Assert.EndsWith($"/T/{stage.Get<DemoShop>().Showcase}", address, StringComparison.Ordinal);
        await using var player = await Journey.Phone(stage, javaScript: false);
        await player.Go(new Uri(address).AbsolutePath);
        await player.Reads("Restring");
    }

    /// <summary>The preview at true size is too small for a screenshot of one pixel a dot; paper is not.</summary>
    private static async Task<byte[]> Enlarged(IPage page)
    {
        await page.SetViewportSizeAsync(2400, 1200);
        var label = page.Locator(".label-preview svg");
        await label.EvaluateAsync("svg => { svg.setAttribute('width', '2000'); svg.setAttribute('height', '320'); }");
        return await label.ScreenshotAsync();
    }

    private static string Scan(byte[] screenshot)
    {
        using var bitmap = SKBitmap.Decode(screenshot);
        var grey = bitmap.Pixels.Select(p => (byte)((p.Red * 30 + p.Green * 59 + p.Blue * 11) / 100)).ToArray();
        var reader = new BarcodeReaderGeneric { Options = new DecodingOptions { PossibleFormats = [BarcodeFormat.QR_CODE], TryHarder = true } };
        var read = reader.Decode(new RGBLuminanceSource(grey, bitmap.Width, bitmap.Height, RGBLuminanceSource.BitmapFormat.Gray8));
        Assert.NotNull(read);
        return read.Text;
    }
}
