using System.Text.Encodings.Web;
using System.Text.Unicode;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.WebEncoders;
using TagPage.Records.Backups;
using TagPage.Records.DueDates;
using TagPage.Records.Import;
using TagPage.Records.Reminders;
using TagPage.Records.Search;
using TagPage.Records.Shop;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Import;
using TagPage.Web.Mail;
using TagPage.Web.Pages.Shop.Shared;
using TagPage.Web.Photos;
using TagPage.Web.Setup;
using TagPage.Web.Start.Demo;
using TagPage.Web.StringingLists;
using TagPage.Web.Words;

namespace TagPage.Web.Start;

internal static class Services
{
    public static void AddTagPage(this IServiceCollection services, IConfiguration configuration, string dataFolder)
    {
        var folder = new DataFolder(configuration[App.DataFolderSetting] ?? dataFolder);
        services.AddSingleton(folder);
        services.AddSingleton<FolderLock>();
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(Console.Out);
        services.AddSingleton<Database>();
        services.AddSingleton(Migration.Embedded);
        services.AddSingleton<Migrator>();
        services.AddSingleton<ShopClock>();
        services.AddSingleton<SetupCheck>();
        services.AddSingleton<BackupSeal>();
        services.AddSingleton<Restorer>();
        services.AddHostedService<BackupWorker>();
        services.AddSingleton<DueDateKeeper>();
        services.AddSingleton<StockKeeper>();
        services.AddSingleton<NameKeeper>();
        services.AddSingleton<DueDateWorker>();
        services.AddHostedService(s => s.GetRequiredService<DueDateWorker>());
        services.AddSingleton<PublicStyle>();
        services.AddSingleton<KeptPages>();
        services.AddResponseCompression(o => o.EnableForHttps = true);
        services.AddSingleton<Manual>();
        services.AddSingleton<LicenceTexts>();
        services.AddSingleton<DataFacts>();
        services.AddSingleton<SourceMark>();
        services.AddSingleton<SecurityLog>();
        services.AddSingleton<WrongCodes>();
        services.AddSingleton<CodeGuard>();
        services.AddSingleton<TagLookup>();
        services.AddFound();
        var configured = new ConfiguredAddress(configuration);
        services.AddSingleton(configured);
        services.AddSingleton(s => new PublicAddress(configured, () => s.GetRequiredService<AddressStore>().Chosen));
        services.AddSingleton<AddressCheck>();
        services.AddSingleton<SettingSource>();
        var cookies = new CookieRules(configured);
        services.AddSingleton(cookies);
        services.AddDataProtection().SetApplicationName("TagPage").PersistKeysToFileSystem(new DirectoryInfo(folder.Keys));
        services.AddStores();
        services.AddSingleton<Importer>();
        services.AddSingleton<KeptAnswers>();
        services.AddSingleton<ListPlanner>();
        services.AddSingleton<ListDesk>();
        services.AddSingleton<StringingListWorker>();
        services.AddHostedService(provider => provider.GetRequiredService<StringingListWorker>());
        services.AddSingleton<JobChoicesReader>();
        services.AddSingleton<Uploads>();
        services.AddSingleton<PhotoDesk>();
        services.AddHostedService<UploadSweeper>();
        services.AddSingleton<DemoFinder>();
        services.AddSingleton<DemoEvent>();
        services.AddSingleton<DemoGuides>();
        services.AddSingleton<DemoReadings>();
        services.AddSingleton<DemoMoney>();
        services.AddSingleton<DemoStock>();
        services.AddSingleton<DemoStops>();
        services.AddSingleton<DemoLoans>();
        services.AddSingleton<DemoFrames>();
        services.AddSingleton<DemoMachines>();
        services.AddSingleton<DemoCounter>();
        services.AddSingleton<DemoShop>();
        services.AddSingleton<DemoReminder>();
        services.AddSingleton<DemoOwnPage>();
        services.AddScoped<DemoPeople>();
        services.AddMail(configuration);
        services.AddSingleton<ReminderMails>();
        services.AddSingleton<BatchReminder>();
        services.AddSingleton<BatchWorker>();
        services.AddHostedService(provider => provider.GetRequiredService<BatchWorker>());
        services.AddOwnPage();
        services.AddEvents();
        services.AddLabels();
        services.AddPages(cookies);
        services.AddSignIn(cookies);
        services.AddProxies(configuration);
        services.AddHealth();
        services.AddSingleton<ShopDoors>();
        services.AddAuthorizationBuilder().AddShopPolicies();
    }

    /// <summary>Every *Store of the records, found by its name: a new store needs no line here.</summary>
    private static void AddStores(this IServiceCollection services)
    {
        foreach (var store in typeof(Database).Assembly.GetTypes().Where(IsStore))
            services.AddSingleton(store);
    }

    private static bool IsStore(Type type) =>
        type is { IsClass: true, IsAbstract: false, IsNested: false } && type.Name.EndsWith("Store", StringComparison.Ordinal);

    private static void AddPages(this IServiceCollection services, CookieRules cookies)
    {
        // Names in every script are written as letters, not as numeric references.
        services.Configure<WebEncoderOptions>(o => o.TextEncoderSettings = new TextEncoderSettings(UnicodeRanges.All));
        services.AddRouting(o => o.LowercaseUrls = true);
        services.AddRazorPages(o =>
        {
            o.Conventions.AllowAnonymousToPage("/Index");
            o.Conventions.AllowAnonymousToPage("/Problem");
            o.Conventions.AllowAnonymousToFolder("/Tag");
            o.Conventions.AllowAnonymousToFolder("/Found");
            o.Conventions.AllowAnonymousToFolder("/Reminder");
            o.Conventions.AllowAnonymousToFolder("/Care");
            o.Conventions.AuthorizeFolder("/OwnPage", OwnPageCookie.Policy);
            o.Conventions.AllowAnonymousToPage("/OwnPage/Enter");
            o.Conventions.AllowAnonymousToPage("/OwnPage/Link");
            o.Conventions.AllowAnonymousToPage("/OwnPage/Out");
            o.Conventions.AuthorizeFolder("/Desk", DeskCookie.Policy);
            o.Conventions.AllowAnonymousToPage("/Desk/Enter");
            o.Conventions.AllowAnonymousToPage("/Desk/Leave");
            o.Conventions.AllowAnonymousToPage("/Account/SignIn");
            o.Conventions.AllowAnonymousToPage("/Account/Code");
            o.Conventions.AllowAnonymousToPage("/Account/SignOut");
            o.Conventions.AllowAnonymousToPage("/Account/SetUp");
            o.Conventions.AllowAnonymousToPage("/Account/NewPassword");
            o.Conventions.AllowAnonymousToPage("/Account/Invitation");
            o.Conventions.AllowAnonymousToPage("/Account/Change");
            o.Conventions.AuthorizePage("/Account/Pin", ShopPolicies.Bench);
            foreach (var page in BenchPages.All)
                o.Conventions.AuthorizePage(page, ShopPolicies.Bench);
            foreach (var page in BenchPages.OfOwnAccount)
                o.Conventions.AuthorizePage(page, ShopPolicies.OwnAccount);
        }).AddMvcOptions(FormBinding.Configure).AddMvcOptions(AddFilters);
        BoundProperties.Use(services);
        services.AddAntiforgery(o => cookies.Apply(o.Cookie, CookieRules.Form));
        services.Configure<CookieTempDataProviderOptions>(o => cookies.Apply(o.Cookie, "line"));
    }

    private static void AddFilters(MvcOptions options)
    {
        // As instances: added by their type they would lose their place in the order.
        options.Filters.Add(new FormSize());
        options.Filters.Add(new ReadableForm());
        options.Filters.Add(new KnownVerbs());
        options.Filters.Add(new AnsweredForm());
        options.Filters.Add(new SettingNote());
    }
}
