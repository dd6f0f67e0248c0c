using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Playwright;
using TagPage.Web.Data;
using TagPage.Web.Demo;
using TagPage.Web.Pages.Account;

namespace TagPage.Browser.Tests;

/// <summary>The whole program on a real port with a data folder of its own, and a real Chromium, for the tests of one class.</summary>
public sealed class Stage : IAsyncLifetime
{
    public const string OwnerName = "runa";
    public const string OwnerPassword = "seven slow herons wade";

    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

    private readonly string _folder = Path.Combine(Path.GetTempPath(), "tagpage-browser-" + Guid.NewGuid().ToString("N"));
    private readonly SemaphoreSlim _opening = new(1);
    private IPlaywright _playwright = null!;
    private ProgramHost _program = null!;

    public IBrowser Browser { get; private set; } = null!;

    public string Address { get; private set; } = "";

    public T Get<T>() where T : notnull => _program.Services.GetRequiredService<T>();

    public async ValueTask InitializeAsync()
    {
        _program = new ProgramHost(_folder);
        _program.UseKestrel(0);
        _program.StartServer();
        Address = _program.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First()
            .Replace("127.0.0.1", "localhost", StringComparison.Ordinal);
        _playwright = await Playwright.CreateAsync();
        Browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium(),
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.CloseAsync();
        _playwright.Dispose();
        _opening.Dispose();
        await _program.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>Brings the invented shop in, with an owner who can sign in. Asked again, it does nothing.</summary>
    public async Task OpenDemo()
    {
        await _opening.WaitAsync();
        try
        {
            if (Get<ShopStore>().Get().Name.Length > 0)
                return;
            Get<DemoShop>().Prepare();
            using var scope = _program.Services.CreateScope();
            await scope.ServiceProvider.GetRequiredService<Owners>().Add(OwnerName, OwnerPassword);
        }
        finally
        {
            _opening.Release();
        }
    }

    /// <summary>CHROMIUM names another one than the first found on the path.</summary>
    internal static string Chromium() =>
        Environment.GetEnvironmentVariable("CHROMIUM")
        ?? Names.SelectMany(n => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(p => Path.Combine(p, n)))
            .FirstOrDefault(File.Exists)
        ?? throw new InvalidOperationException("There is no Chromium here. bash tests/run.sh installs it, or says how.");

    private sealed class ProgramHost(string folder) : WebApplicationFactory<Program>
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            builder.UseSetting("TagPage:DataFolder", folder);
            builder.ConfigureLogging(l => l.ClearProviders());
        }
    }
}
