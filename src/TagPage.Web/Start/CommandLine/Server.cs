using TagPage.Records.Shop;
using TagPage.Web.Http;

namespace TagPage.Web.Start.CommandLine;

/// <summary>Runs the web server until it is told to stop.</summary>
internal static class Server
{
    /// <param name="app">Ready to start.</param>
    /// <param name="announce">Called once it listens.</param>
    public static async Task Run(WebApplication app, Action<Listening> announce)
    {
        await using (app)
        {
            // Read before anything is started, so that a slip is told in one sentence.
            foreach (var url in (app.Configuration[WebHostDefaults.ServerUrlsKey] ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries))
                BindingAddress.Parse(url);
            if (app.Services.GetRequiredService<PublicAddress>() is { IsConfigured: true } address)
                app.Services.GetRequiredService<UsedAddressStore>().Note(address.Base);
            await Start(app);
            if (Listening.Of(app.Services) is { } listening)
            {
                app.Services.GetRequiredService<PublicAddress>().UseListening(listening.FromOutside ?? listening.AtThisMachine);
                announce(listening);
            }
            await app.WaitForShutdownAsync();
        }
    }

    /// <summary>Where it cannot listen, it is told to stop: background work that has not begun would be reported as a crash.</summary>
    private static async Task Start(WebApplication app)
    {
        try
        {
            await app.StartAsync();
        }
        catch
        {
            await app.StopAsync();
            throw;
        }
    }
}
