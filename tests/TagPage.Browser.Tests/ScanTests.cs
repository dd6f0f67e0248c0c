using Microsoft.Playwright;
using TagPage.Labels;
using TagPage.Web.Start.Demo;

namespace TagPage.Browser.Tests;

/// <summary>A tag is read with the camera: its square comes in through Chromium's fake camera.</summary>
public sealed class ScanTests(DemoStage stage, OneBrowser chromium) : IClassFixture<DemoStage>
{
    private const int Width = 640, Height = 480, Module = 8;

    [Fact]
    public async Task Square_in_front_of_the_camera_leads_to_its_racket_and_no_picture_leaves_the_browser()
    {
        var code = stage.Get<DemoShop>().Showcase;
        var file = Path.Combine(Path.GetTempPath(), $"tagpage-camera-{Guid.NewGuid():N}.y4m");
        await File.WriteAllBytesAsync(file, Film(TagQr.Of($"{stage.Address}/t/{code}")), TestContext.Current.CancellationToken);
        await using var browser = await chromium.Start("--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream", "--use-file-for-fake-video-capture=" + file);
        await using var owner = await Journey.Desk(stage, browser);
        await owner.SignIn();
        await owner.Go("/shop/find");
        var posts = 0;
        owner.Page.Request += (_, request) => posts += request.Method == "POST" || request.Url.StartsWith("ws", StringComparison.Ordinal) ? 1 : 0;

        await owner.Page.GetByRole(AriaRole.Button, new() { Name = "Scan with the camera" }).ClickAsync();
        await owner.Page.WaitForURLAsync("**/shop/rackets/*");

        await Assertions.Expect(owner.Page.Locator("main")).ToContainTextAsync(code.Display);
        Assert.Equal(0, posts);
        File.Delete(file);
    }

    [Fact]
    public async Task Where_the_camera_is_refused_that_is_said_and_the_code_is_typed()
    {
        await using var owner = await Journey.Desk(stage);
        await owner.SignIn();
        await owner.Go("/shop/find");

        await owner.Page.GetByRole(AriaRole.Button, new() { Name = "Scan with the camera" }).ClickAsync();

        await Assertions.Expect(owner.Page.Locator("[data-scan] [role=status]")).ToContainTextAsync("Type the code instead.");
    }

    /// <summary>Ten pictures a second of a square on grey paper, uncompressed (YUV4MPEG2, 4:2:0).</summary>
    private static byte[] Film(TagQr qr)
    {
        var luma = new byte[Width * Height];
        Array.Fill(luma, (byte)200);
        var (left, top) = ((Width - qr.Modules * Module) / 2, (Height - qr.Modules * Module) / 2);
        for (var y = 0; y < qr.Modules * Module; y++)
            for (var x = 0; x < qr.Modules * Module; x++)
                luma[(top + y) * Width + left + x] = (byte)(qr.IsDark(x / Module, y / Module) ? 40 : 200);
        using var film = new MemoryStream();
        film.Write("YUV4MPEG2 W640 H480 F10:1 Ip A1:1 C420jpeg\n"u8);
        for (var picture = 0; picture < 10; picture++)
        {
            film.Write("FRAME\n"u8);
            film.Write(luma);
            film.Write(Enumerable.Repeat((byte)128, Width * Height / 2).ToArray());
        }
        return film.ToArray();
    }
}
