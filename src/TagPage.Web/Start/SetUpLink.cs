using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using TagPage.Records.Accounts;
using TagPage.Web.Http;

namespace TagPage.Web.Start;

/// <summary>As long as there is no account, prints a new set-up link at each start. It goes to standard output, never into the log.</summary>
public sealed class SetUpLink(
    SetUpStore store, PublicAddress address, IServer server, IHostApplicationLifetime lifetime, TextWriter output) : IHostedService
{
    public Task StartAsync(CancellationToken cancellationToken)
    {
        lifetime.ApplicationStarted.Register(Print);
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    private void Print()
    {
        if (store.NewToken() is { } token)
            output.WriteLine(Announcement.Line("Set up", $"{Base}/account/set-up/{token}"));
    }

    /// <summary>Without a configured address the owner sits at this machine: over plain http set-up works nowhere else.</summary>
    private string Base => address.IsConfigured ? address.Base : Listening.Of(Bound ?? address.Base, lan: null).AtThisMachine;

    private string? Bound => server.Features.Get<IServerAddressesFeature>()?.Addresses.FirstOrDefault();
}
