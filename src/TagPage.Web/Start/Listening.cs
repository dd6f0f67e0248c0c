using System.Net;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace TagPage.Web.Start;

/// <summary>Where a started program answers.</summary>
/// <param name="AtThisMachine">For a browser on this machine.</param>
/// <param name="FromOutside">For other devices in the house; null if only this machine can connect.</param>
public sealed record Listening(string AtThisMachine, string? FromOutside)
{
    private static readonly string[] Anywhere = ["0.0.0.0", "[::]", "*", "+"];

    /// <summary>Null where the server has no address, as in tests.</summary>
    public static Listening? Of(IServiceProvider services) =>
        services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses.FirstOrDefault() is { } bound
            ? Of(bound, LanAddress.OfThisMachine())
            : null;

    /// <param name="bound">As the server names it: http://[::]:5080</param>
    /// <param name="lan">This machine's address in its network, if it has one.</param>
    public static Listening Of(string bound, IPAddress? lan)
    {
        var address = BindingAddress.Parse(bound);
        if (!Anywhere.Contains(address.Host))
            return new Listening(At(address, address.Host), IsLoopback(address.Host) ? null : At(address, address.Host));
        return new Listening(At(address, "localhost"), lan is null ? null : At(address, lan.ToString()));
    }

    private static string At(BindingAddress address, string host) => $"{address.Scheme}://{host}:{address.Port}";

    private static bool IsLoopback(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));
}
