using Microsoft.AspNetCore.HttpOverrides;
using TagPage.Records.Storage;
using IPAddress = System.Net.IPAddress;
using IPNetwork = System.Net.IPNetwork;

namespace TagPage.Web.Http;

internal static class Proxies
{
    /// <summary>
    /// Who is believed about the client's address and scheme: proxies on this machine, and those that the setting
    /// TagPage:Proxies names (addresses or networks like 10.0.0.0/24, with commas between). Nobody is believed about the host.
    /// </summary>
    public static void AddProxies(this IServiceCollection services, IConfiguration configuration)
    {
        var named = (configuration["TagPage:Proxies"] ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var networks = named.Select(Read).ToList();
        services.Configure<ForwardedHeadersOptions>(o =>
        {
            o.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
            // Read from the right for as long as the sender is one of ours.
            o.ForwardLimit = null;
            foreach (var network in networks)
                o.KnownIPNetworks.Add(network);
        });
    }

    private static IPNetwork Read(string text)
    {
        if (IPNetwork.TryParse(text, out var network))
            return network;
        if (IPAddress.TryParse(text, out var address))
            return new IPNetwork(address, address.GetAddressBytes().Length * 8);
        throw new CannotStartException($"TagPage:Proxies names “{text}”; write addresses like 10.0.0.2 or networks like 10.0.0.0/24.");
    }
}
