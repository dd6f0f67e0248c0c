using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using TagPage.Records.Search;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;

namespace TagPage.Web.Tests.Cast;

/// <summary>The real program, running. One shop after the other moves in and finds an empty file, a new clock and no memories.</summary>
public sealed class House : WebApplicationFactory<Program>
{
    private readonly HouseClock _clock = new();
    private readonly HouseLog _log = new();
    private readonly HouseOutput _output = new();
    private readonly Dictionary<string, string> _settings;
    private readonly int? _hashRounds;
    private readonly bool _ownsFolder;
    private IServiceCollection? _services;
    private bool _isRunning;

    /// <summary>For one shop alone, which begins or finds its file as the program itself would.</summary>
    public House(TestShop shop, string? folder) : this(shop, folder, isShared: false) => Settle(shop);

    private House(TestShop shop, string? folder, bool isShared)
    {
        (_settings, _hashRounds) = (new(shop.Settings), shop.HashRounds);
        (_ownsFolder, IsShared) = (folder is null, isShared);
        Folder = folder ?? Path.Combine(Path.GetTempPath(), "tagpage-test-" + Guid.NewGuid().ToString("N"));
    }

    /// <summary>For all shops with the same settings.</summary>
    public static House Shared(TestShop first) => new(first, folder: null, isShared: true);

    public bool IsShared { get; }

    public string Folder { get; }

    /// <summary>The program's own services of which there is one.</summary>
    public IEnumerable<object> SingleServices =>
        [.. Services.GetServices<IHostedService>(), .. _services!.Where(IsSingleOfOurs).Select(s => Services.GetRequiredService(s.ServiceType))];

    private Database Database => Services.GetRequiredService<Database>();

    public void MoveIn(TestShop shop)
    {
        Settle(shop);
        Template.CopyTo(Directory.CreateDirectory(Folder).FullName);
        if (_isRunning)
            BeginAnew();
    }

    private void Settle(TestShop shop)
    {
        _clock.Follow(shop.Clock);
        (_log.Lines, _output.Lines) = (shop.Log, shop.Output);
    }

    /// <summary>What a start does.</summary>
    private void BeginAnew()
    {
        Services.GetRequiredService<NameKeeper>().Begin();
        if (Services.GetRequiredService<PublicAddress>() is { IsConfigured: true } address)
            Services.GetRequiredService<UsedAddressStore>().Note(address.Base);
        foreach (var hosted in Services.GetServices<IHostedService>().Where(h => IsOurs(h.GetType())))
            hosted.StartAsync(CancellationToken.None).GetAwaiter().GetResult();
    }

    /// <summary>Leaves only what the running program holds on to: the keys, which it has in memory too, and its lock.</summary>
    public void MoveOut()
    {
        if (!Services.GetRequiredService<DatabaseCheck>().IsSound)
            throw new InvalidOperationException("Its records were damaged, and the program remembers that for the next shop: such a test needs a house of its own.");
        _isRunning = true;
        Database.Dispose();
        foreach (var file in Directory.EnumerateFiles(Folder).Where(f => Path.GetFileName(f) != "tagpage.lock"))
            File.Delete(file);
        foreach (var folder in Directory.EnumerateDirectories(Folder).Where(f => Path.GetFileName(f) != "keys"))
            Directory.Delete(folder, recursive: true);
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("TagPage:DataFolder", Folder);
        foreach (var (key, value) in _settings)
            builder.UseSetting(key, value);
        builder.ConfigureLogging(l => l.ClearProviders().AddProvider(_log));
        builder.ConfigureTestServices(services =>
        {
            _services = services;
            services.RemoveAll<TimeProvider>();
            services.AddSingleton<TimeProvider>(_clock);
            // Work in the background is done when a test says so, not beside it.
            foreach (var hosted in services.Where(IsBackgroundWork).ToList())
                services.Remove(hosted);
            services.AddSingleton<TextWriter>(_output);
            services.AddSingleton<IStartupFilter, TestSource>();
            if (_hashRounds is { } rounds)
                services.PostConfigure<PasswordHasherOptions>(o => o.IterationCount = rounds);
            TestSignIn.Add(services);
        });
    }

    private static bool IsBackgroundWork(ServiceDescriptor service) =>
        service.ServiceType == typeof(IHostedService) && (service.ImplementationFactory is not null || service.ImplementationType!.IsAssignableTo(typeof(BackgroundService)));

    private static bool IsSingleOfOurs(ServiceDescriptor service) =>
        service is { Lifetime: ServiceLifetime.Singleton, IsKeyedService: false } && IsOurs(service.ServiceType);

    private static bool IsOurs(Type type) => type.Assembly == typeof(Database).Assembly || type.Assembly == typeof(Program).Assembly;

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && _ownsFolder && Directory.Exists(Folder))
            Directory.Delete(Folder, recursive: true);
    }
}
