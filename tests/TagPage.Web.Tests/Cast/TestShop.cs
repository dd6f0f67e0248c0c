using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using TagPage.Web.Data;

namespace TagPage.Web.Tests.Cast;

/// <summary>A whole shop of its own: the real program on a real SQLite file in a folder of its own, with a clock that obeys.</summary>
public sealed class TestShop : WebApplicationFactory<Program>
{
    public static readonly DateOnly Today = new(2026, 11, 25);

    private const string Own = "tagpage-test-";

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 11, 25, 10, 0, 0, TimeSpan.Zero));

    public LogLines Log { get; } = new();

    /// <summary>What the program prints as it starts.</summary>
    public PrintedLines Output { get; } = new();

    /// <summary>The data folder; one that is named here outlives the shop.</summary>
    public string Folder { get; init; } = Path.Combine(Path.GetTempPath(), Own + Guid.NewGuid().ToString("N"));

    public Database Database => Services.GetRequiredService<Database>();

    public Records Records => new(Database);

    public T Get<T>() where T : notnull => Services.GetRequiredService<T>();

    /// <summary>Settings beside the cast's own, or instead of them; before the first request.</summary>
    public Dictionary<string, string> Settings { get; } = new()
    {
        ["TagPage:Address"] = "https://tag.example",
    };

    /// <summary>Few, so that tests are quick; null for as many as the program asks for.</summary>
    public int? HashRounds { get; init; } = 1_000;

    /// <summary>Somebody with nothing but an address.</summary>
    public Visitor Stranger() => new(CreateClient(Plain));

    /// <summary>The same from a network address and over a scheme of the test's choice.</summary>
    public Visitor Stranger(string source, string at = "https://localhost")
    {
        var client = CreateClient(new() { AllowAutoRedirect = false, BaseAddress = new Uri(at) });
        client.DefaultRequestHeaders.Add(TestSource.Header, source);
        return new Visitor(client);
    }

    /// <summary>The shop's owner, signed in.</summary>
    public Visitor Owner()
    {
        var client = CreateClient(Plain);
        client.DefaultRequestHeaders.Add(TestSignIn.Header, "Owner");
        return new Visitor(client);
    }

    private static WebApplicationFactoryClientOptions Plain => new() { AllowAutoRedirect = false, BaseAddress = new Uri("https://localhost") };

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("TagPage:DataFolder", Folder);
        foreach (var (key, value) in Settings)
            builder.UseSetting(key, value);
        builder.ConfigureLogging(l => l.ClearProviders().AddProvider(Log));
        builder.ConfigureTestServices(services =>
        {
            services.RemoveAll<TimeProvider>();
            services.AddSingleton<TimeProvider>(Clock);
            // Work in the background is done when a test says so, not beside it.
            foreach (var hosted in services.Where(s => s.ServiceType == typeof(IHostedService) && s.ImplementationFactory is not null).ToList())
                services.Remove(hosted);
            services.AddSingleton<TextWriter>(Output);
            services.AddSingleton<IStartupFilter, TestSource>();
            if (HashRounds is { } rounds)
                services.PostConfigure<PasswordHasherOptions>(o => o.IterationCount = rounds);
            TestSignIn.Add(services);
        });
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Path.GetFileName(Folder).StartsWith(Own, StringComparison.Ordinal) && Directory.Exists(Folder))
            Directory.Delete(Folder, recursive: true);
    }
}
