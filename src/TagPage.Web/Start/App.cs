using TagPage.Records.DueDates;
using TagPage.Records.Outbox;
using TagPage.Records.Search;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Start;

/// <summary>Puts the program together: settings, services, the request pipeline.</summary>
public static class App
{
    public const string DefaultAddress = "http://localhost:5080";

    internal const string DataFolderSetting = "TagPage:DataFolder";

    private const string DefaultFolder = "data";

    /// <summary>Bytes. A page that takes files names a limit of its own.</summary>
    private const long LargestForm = 1 << 20;

    /// <param name="args">Settings, in the forms that the framework reads.</param>
    /// <param name="dataFolder">Used where no setting names another.</param>
    public static WebApplicationBuilder CreateBuilder(string[] args, string dataFolder = DefaultFolder)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = ContentRoot() });
        // Without this an unpublished build finds its styles in the Development environment only.
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestForm;
        });
        Quieten(builder.Logging);
        if (string.IsNullOrEmpty(builder.Configuration[WebHostDefaults.ServerUrlsKey]))
            builder.WebHost.UseUrls(DefaultAddress);
        builder.Services.AddTagPage(builder.Configuration, dataFolder);
        return builder;
    }

    /// <summary>The data folder that settings name, without making it.</summary>
    internal static string DataFolderOf(string[] args) =>
        WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = ContentRoot() }).Configuration[DataFolderSetting] ?? DefaultFolder;

    private static void Quieten(ILoggingBuilder log)
    {
        // The framework's notes on each request would put the tokens of private links into the log.
        log.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);
        // It warns at each start that keys are unencrypted; the data folder is readable by its owner only.
        log.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        // We print where it listens ourselves, and a failed start is explained in a sentence instead of a stack trace.
        log.AddFilter("Microsoft.Hosting.Lifetime", LogLevel.Warning);
        log.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical);
    }

    /// <summary>Builds the program and brings its database up to date.</summary>
    /// <param name="builder">With all settings.</param>
    /// <param name="serves">It keeps running and needs the data folder for itself; a short command may run beside it.</param>
    /// <exception cref="CannotStartException">The data folder is neither empty nor a sound shop, and is left as it is; or another program has it.</exception>
    public static WebApplication Build(WebApplicationBuilder builder, bool serves = false)
    {
        var app = builder.Build();
        var folder = app.Services.GetRequiredService<DataFolder>();
        KeyFiles.RefuseDamaged(folder);
        OpenRecords(app.Services, alone: serves);
        MakeKeys(app.Services);
        KeyFiles.CloseToOthers(folder);
        app.UseTagPage();
        return app;
    }

    /// <summary>Judges the database before anything opens it, then brings it up to date.</summary>
    internal static void OpenRecords(IServiceProvider services, bool alone)
    {
        RecordsFile.Judge(services.GetRequiredService<DataFolder>(), services.GetRequiredService<IReadOnlyList<Migration>>());
        if (alone)
            services.GetRequiredService<FolderLock>().Take();
        services.GetRequiredService<Migrator>().Run();
        services.GetRequiredService<NameKeeper>().Attach();
        services.GetRequiredService<DueDateKeeper>().Attach();
        services.GetRequiredService<StockKeeper>().Attach();
    }

    /// <summary>Keys are written as the program starts: a page that needs one later may find the disk full.</summary>
    private static void MakeKeys(IServiceProvider services)
    {
        services.GetRequiredService<LinkTokens>();
        services.GetRequiredService<FinderMark>();
    }

    /// <summary>A published program carries its styles beside it and may be started from any folder.</summary>
    private static string? ContentRoot() =>
        Directory.Exists(Path.Combine(AppContext.BaseDirectory, "wwwroot")) ? AppContext.BaseDirectory : null;
}
