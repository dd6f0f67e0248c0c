using System.Text.Encodings.Web;
using System.Text.Unicode;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.WebEncoders;
using TagPage.Web.Data;
using TagPage.Web.Data.Dates;
using TagPage.Web.Demo;
using TagPage.Web.Forms;
using TagPage.Web.Limits;
using TagPage.Web.Mail;
using TagPage.Web.Pages.Found;
using TagPage.Web.Pages.My;
using TagPage.Web.Pages.Shop.Import;
using TagPage.Web.Pages.Shop.Labels;
using TagPage.Web.Pages.Shop.Nudges;
using TagPage.Web.Pages.Tag;

namespace TagPage.Web.Hosting;

internal static class Services
{
    public static void AddTagPage(this IServiceCollection services, IConfiguration configuration, string dataFolder)
    {
        var folder = new DataFolder(configuration["TagPage:DataFolder"] ?? dataFolder);
        services.AddSingleton(folder);
        services.AddSingleton<FolderLock>();
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(Console.Out);
        services.AddSingleton<Database>();
        services.AddSingleton(Migration.Embedded);
        services.AddSingleton<Migrator>();
        services.AddSingleton<ShopStore>();
        services.AddSingleton<ShopClock>();
        services.AddSingleton<CopySweeper>();
        services.AddHostedService(s => s.GetRequiredService<CopySweeper>());
        services.AddSingleton<KeptDates>();
        services.AddSingleton<DatesAgain>();
        services.AddHostedService(s => s.GetRequiredService<DatesAgain>());
        services.AddSingleton<PublicStyle>();
        services.AddSingleton<Pages.Shop.Help.Manual>();
        services.AddSingleton<SourceMark>();
        services.AddSingleton<WrongCodes>();
        services.AddSingleton<CodeGuard>();
        services.AddSingleton<TagDoor>();
        services.AddFound();
        var address = new PublicAddress(configuration);
        services.AddSingleton(address);
        var cookies = new CookieRules(address);
        services.AddSingleton(cookies);
        services.AddDataProtection().SetApplicationName("TagPage").PersistKeysToFileSystem(new DirectoryInfo(folder.Keys));
        services.AddStores();
        services.AddSingleton<Importer>();
        services.AddSingleton<Uploads>();
        services.AddHostedService<UploadSweeper>();
        services.AddSingleton<DemoStore>();
        services.AddSingleton<DemoFinder>();
        services.AddSingleton<DemoGuides>();
        services.AddSingleton<DemoReadings>();
        services.AddSingleton<DemoShop>();
        services.AddSingleton<DemoReminder>();
        services.AddSingleton<DemoCorner>();
        services.AddScoped<DemoOwner>();
        services.AddMail(configuration);
        services.AddSingleton<NudgeTexts>();
        services.AddSingleton<BatchReminder>();
        services.AddSingleton<BatchWorker>();
        services.AddHostedService(provider => provider.GetRequiredService<BatchWorker>());
        services.AddCorner();
        services.AddLabels();
        services.AddPages(cookies);
        services.AddSignIn(cookies);
        services.AddProxies(configuration);
        services.AddHealth();
        services.AddAuthorizationBuilder().SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build());
    }

    /// <summary>Every *Store of a page folder, found by its name: a new store needs no line here.</summary>
    private static void AddStores(this IServiceCollection services)
    {
        foreach (var store in typeof(Services).Assembly.GetTypes().Where(IsPageStore))
            services.AddSingleton(store);
    }

    private static bool IsPageStore(Type type) =>
        type is { IsClass: true, IsAbstract: false, IsNested: false }
        && type.Name.EndsWith("Store", StringComparison.Ordinal)
        && type.Namespace!.StartsWith("TagPage.Web.Pages", StringComparison.Ordinal);

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
            o.Conventions.AllowAnonymousToFolder("/Nudge");
            o.Conventions.AllowAnonymousToFolder("/Care");
            o.Conventions.AuthorizeFolder("/My", CornerCookie.Policy);
            o.Conventions.AllowAnonymousToPage("/My/Enter");
            o.Conventions.AllowAnonymousToPage("/My/Link");
            o.Conventions.AllowAnonymousToPage("/My/Out");
            o.Conventions.AllowAnonymousToPage("/Account/SignIn");
            o.Conventions.AllowAnonymousToPage("/Account/SignOut");
            o.Conventions.AllowAnonymousToPage("/Account/SetUp");
            o.Conventions.AllowAnonymousToPage("/Account/NewPassword");
        }).AddMvcOptions(FormBinding.Configure).AddMvcOptions(AddFilters);
        services.AddAntiforgery(o => cookies.Apply(o.Cookie, "form"));
        services.Configure<CookieTempDataProviderOptions>(o => cookies.Apply(o.Cookie, "line"));
    }

    private static void AddFilters(MvcOptions options)
    {
        options.Filters.Add<FormSize>();
        options.Filters.Add<KnownVerbs>();
    }
}
