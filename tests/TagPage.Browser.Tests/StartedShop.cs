using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace TagPage.Browser.Tests;

/// <summary>The program in this process, on a data folder of the test's choice.</summary>
public sealed class StartedShop(string folder) : WebApplicationFactory<Program>
{
    public static string NewFolder() => Path.Combine(Path.GetTempPath(), "tagpage-browser-" + Guid.NewGuid().ToString("N"));

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("TagPage:DataFolder", folder);
        builder.ConfigureLogging(l => l.ClearProviders());
        // Hashing takes half a second a password, every journey signs in, and none is about that; the published program keeps to its rounds.
        builder.ConfigureTestServices(services => services.PostConfigure<PasswordHasherOptions>(o => o.IterationCount = 1_000));
    }
}
