using TagPage.Records.Accounts;
using TagPage.Records.Storage;
using TagPage.Web.Http;

namespace TagPage.Web.Start.CommandLine;

/// <summary>Makes a one-time link without the web server: to set the shop up or, where it has an owner, to set a forgotten password anew.</summary>
public static class SetUpLinkCommand
{
    public static void Run(string[] settings, TextWriter output)
    {
        using var app = App.Build(App.CreateBuilder(settings));
        foreach (var line in Lines(app))
            output.WriteLine(line);
    }

    internal static IEnumerable<string> Lines(WebApplication app) => Lines(app.Services, Base(app));

    /// <param name="services">Of the program on the shop's data folder.</param>
    /// <param name="address">Where the owner's browser finds the shop, without a trailing slash.</param>
    public static IEnumerable<string> Lines(IServiceProvider services, string address)
    {
        yield return Announcement.Line("Records", services.GetRequiredService<DataFolder>().Root);
        yield return services.GetRequiredService<NewPasswordStore>().NewToken() is { } token
            ? Announcement.Line("Password", $"{address}/account/new-password/{token}")
            : Announcement.Line("Set up", $"{address}/account/set-up/{services.GetRequiredService<SetUpStore>().NewToken()}");
        yield return "The link works once, for 30 minutes, while the shop runs on these records.";
    }

    /// <summary>The shop's own address, else the one at which it listens when it is started with the same settings.</summary>
    private static string Base(WebApplication app)
    {
        var address = app.Services.GetRequiredService<PublicAddress>();
        var listening = app.Configuration[WebHostDefaults.ServerUrlsKey]?.Split(';')[0];
        return address.IsConfigured || string.IsNullOrEmpty(listening) ? address.Base : Listening.Of(listening, lan: null).AtThisMachine;
    }
}
