using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using TagPage.Web.Data;

namespace TagPage.Web.Tests.Cast;

/// <summary>A whole shop of its own: the real program on a real SQLite file in a folder of its own, with a clock that obeys.</summary>
public sealed class TestShop : WebApplicationFactory<Program>
{
    public static readonly DateOnly Today = new(2026, 11, 25);

    private readonly string _folder = Path.Combine(Path.GetTempPath(), "tagpage-test-" + Guid.NewGuid().ToString("N"));

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 11, 25, 10, 0, 0, TimeSpan.Zero));

    public LogLines Log { get; } = new();

    public string Folder => _folder;

    public Database Database => Services.GetRequiredService<Database>();

    public Records Records => new(Database);

    public T Get<T>() where T : notnull => Services.GetRequiredService<T>();

    /// <summary>Somebody with nothing but an address.</summary>
    public Visitor Stranger() => new(CreateClient(Plain));

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
        builder.UseSetting("TagPage:DataFolder", _folder);
        builder.UseSetting("TagPage:Address", "https://tag.example");
        builder.ConfigureLogging(l => l.ClearProviders().AddProvider(Log));
        builder.ConfigureTestServices(services =>
        {
            services.RemoveAll<TimeProvider>();
            services.AddSingleton<TimeProvider>(Clock);
            TestSignIn.Add(services);
        });
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (!disposing || !Directory.Exists(_folder))
            return;
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }
}
