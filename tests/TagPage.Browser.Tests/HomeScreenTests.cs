namespace TagPage.Browser.Tests;

/// <summary>What Chromium itself says of the manifests.</summary>
public sealed class HomeScreenTests(DemoStage stage, OneBrowser chromium) : IClassFixture<DemoStage>
{
    [Fact]
    public async Task Bench_can_be_put_on_a_home_screen()
    {
        await using var browser = await chromium.StartWhole();
        await using var runa = await Journey.Desk(stage, browser);
        await runa.SignIn();

        var session = await runa.Page.Context.NewCDPSessionAsync(runa.Page);
        var manifest = await session.SendAsync("Page.getAppManifest");
        var faults = await session.SendAsync("Page.getInstallabilityErrors");

        Assert.EndsWith("/shop.webmanifest", manifest!.Value.GetProperty("url").GetString(), StringComparison.Ordinal);
        Assert.Equal("[]", manifest.Value.GetProperty("errors").GetRawText());
        // A session of a test is what Chromium calls incognito; that is all it has against it.
        Assert.Equal(["in-incognito"], faults!.Value.GetProperty("installabilityErrors").EnumerateArray().Select(fault => fault.GetProperty("errorId").GetString()));
    }
}
