using Microsoft.Playwright;
using TagPage.Browser.Tests;

[assembly: AssemblyFixture(typeof(OneBrowser))]

namespace TagPage.Browser.Tests;

/// <summary>Chromium, started once for all tests; each journey opens a session of its own in it.</summary>
public sealed class OneBrowser : IAsyncLifetime
{
    /// <summary>Milliseconds. Only for what never comes: a busy machine may take its time.</summary>
    public const float Patience = 180_000;

    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

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
    public Task<IBrowser> Start(params string[] switches) => _playwright.Chromium.LaunchAsync(new()
    {
        ExecutablePath = Chromium(),
        Timeout = Patience,
        Args =
        [
            "--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run",
            .. switches,
        ],
    });

    /// <summary>CHROMIUM names another one than the first found on the path.</summary>
    private static string Chromium() =>
        Environment.GetEnvironmentVariable("CHROMIUM")
        ?? Names.SelectMany(n => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(p => Path.Combine(p, n)))
            .FirstOrDefault(File.Exists)
        ?? throw new InvalidOperationException("There is no Chromium here. bash tests/run.sh installs it, or says how.");
}
