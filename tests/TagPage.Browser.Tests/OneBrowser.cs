using Microsoft.Playwright;
using TagPage.Browser.Tests;

[assembly: AssemblyFixture(typeof(OneBrowser))]

namespace TagPage.Browser.Tests;

/// <summary>Chromium, started once for all tests; each journey opens a session of its own in it.</summary>
public sealed class OneBrowser : IAsyncLifetime
{
    /// <summary>Milliseconds. Only for what never comes: a busy machine may take its time.</summary>
    public const float Patience = 180_000;

    /// <summary>Chromium without what makes it a program with windows: the same engine in two thirds of the time.</summary>
    private const string Shell = "chromium-headless-shell";

    private static readonly string[] Whole = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

    private IPlaywright _playwright = null!;

    public static IBrowser Browser { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Assertions.SetDefaultExpectTimeout(60_000);
        _playwright = await Playwright.CreateAsync();
        Browser = await Start();
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.CloseAsync();
        _playwright.Dispose();
    }

    /// <summary>Another one, for tests that need switches of their own.</summary>
    public Task<IBrowser> Start(params string[] switches) => Start(Chromium([Shell, .. Whole]) ?? throw new InvalidOperationException("There is no Chromium here. bash tests/run.sh installs it, or says how."), switches);

    /// <summary>The whole program, for what it adds to the engine. A test without it says that it was skipped.</summary>
    public Task<IBrowser> StartWhole()
    {
        var chromium = Chromium(Whole);
        Assert.SkipWhen(chromium is null, "There is no whole Chromium here, so this was not tested.");
        return Start(chromium!, []);
    }

    private Task<IBrowser> Start(string chromium, string[] switches) => _playwright.Chromium.LaunchAsync(new()
    {
        ExecutablePath = chromium,
        Timeout = Patience,
        Args =
        [
            "--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run",
            .. switches,
        ],
    });

    /// <summary>The first found on the path. CHROMIUM names another one.</summary>
    private static string? Chromium(string[] names) =>
        Environment.GetEnvironmentVariable("CHROMIUM")
        ?? names.SelectMany(n => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(p => Path.Combine(p, n)))
            .FirstOrDefault(File.Exists);
}
