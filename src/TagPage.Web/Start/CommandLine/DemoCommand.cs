using TagPage.Records.Demo;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Start.Demo;

namespace TagPage.Web.Start.CommandLine;

/// <summary>The invented shop, to try things in.</summary>
public static class DemoCommand
{
    private const string DefaultFolder = "data-demo";

    public static async Task Run(string[] settings, bool newPassword, bool startOver)
    {
        var builder = App.CreateBuilder(settings, DefaultFolder);
        if (startOver)
            DemoFolder.Clear(new DataFolder(builder.Configuration[App.DataFolderSetting] ?? DefaultFolder));
        var app = App.Build(builder, serves: true);
        var demo = app.Services.GetRequiredService<DemoShop>();
        demo.Prepare();
        var passwords = await Passwords(app.Services, newPassword);
        var reminder = app.Services.GetRequiredService<DemoReminder>();
        var ownPage = app.Services.GetRequiredService<DemoOwnPage>();
        await Server.Run(app, listening =>
        {
            var output = app.Services.GetRequiredService<TextWriter>();
            var address = app.Services.GetRequiredService<PublicAddress>();
            foreach (var line in Lines(listening, address, demo.Showcase.ToString(), demo.Lost?.ToString(), reminder.Path(), ownPage.Path(), passwords))
                output.WriteLine(line);
            app.Services.GetRequiredService<DemoStore>().SetTold(true);
            output.WriteLine(Announcement.Qr(address.Of($"/t/{demo.Showcase}"), colours: !Console.IsOutputRedirected));
        });
    }

    private static async Task<DemoPeople.Passwords?> Passwords(IServiceProvider services, bool renew)
    {
        using var scope = services.CreateScope();
        return await scope.ServiceProvider.GetRequiredService<DemoPeople>().Draw(renew);
    }

    /// <param name="listening">Where the program answers.</param>
    /// <param name="address">The address that links carry, already aware of where it listens.</param>
    /// <param name="code">Of the tag to try first.</param>
    /// <param name="lost">Of the tag of the lost racket; null when it is back.</param>
    /// <param name="reminder">Path of a household's private page; null where nobody is due.</param>
    /// <param name="ownPage">Path of a client's private link to the own page; null without clients.</param>
    /// <param name="passwords">Null where they were told at an earlier start.</param>
    public static IEnumerable<string> Lines(Listening listening, PublicAddress address, string code, string? lost, string? reminder, string? ownPage, DemoPeople.Passwords? passwords)
    {
        // Passwords stay off unencrypted networks: without https the owner signs in at this machine only.
        var signIn = address.IsHttps ? address.Base : listening.AtThisMachine;
        string Secret(string? password) => password is null ? "the password printed at the first start (demo --new-password makes another)" : $"password {password}";
        yield return Announcement.Line("Shop", address.Of("/"));
        yield return Announcement.Line("Sign in", $"{signIn}/account/sign-in  name {DemoPeople.Owner}, {Secret(passwords?.Owner)}");
        yield return Announcement.Line("As helper", $"{signIn}/account/sign-in  name {DemoPeople.Helper}, {Secret(passwords?.Helper)}");
        yield return Announcement.Line("Tag page", address.Of($"/t/{code}"));
        if (lost is not null)
            yield return Announcement.Line("Found page", address.Of($"/t/{lost}/found"));
        if (reminder is not null)
            yield return Announcement.Line("Reminder", address.Of(reminder));
        if (ownPage is not null)
            yield return Announcement.Line("Own page", signIn + ownPage);
        if (!address.IsHttps && listening.FromOutside is not null)
            yield return "Signing in and clients’ own pages need https from another device; on this machine the addresses above work.";
        if (!address.IsConfigured && listening.FromOutside is null)
            yield return "Only this machine can connect. To scan with a phone on the same network, start with --urls http://0.0.0.0:5080";
    }
}
