using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace TagPage.Web.Start;

/// <summary>The address under which a phone in the same network finds this machine.</summary>
public static class LanAddress
{
    /// <param name="Address">One of this machine's.</param>
    /// <param name="HasGateway">Its network leads further, as the house's own does and a virtual one does not.</param>
    public sealed record Candidate(IPAddress Address, bool HasGateway);

    public static IPAddress? OfThisMachine() => Choose(NetworkInterface.GetAllNetworkInterfaces()
        .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
        .Select(n => n.GetIPProperties())
        .SelectMany(p => p.UnicastAddresses.Select(a => new Candidate(a.Address, p.GatewayAddresses.Any(g => !g.Address.Equals(IPAddress.Any))))));

    /// <summary>IPv4 only: private ones first (RFC 1918), those with a way out before others; never loopback or link-local ones.</summary>
    public static IPAddress? Choose(IEnumerable<Candidate> candidates) => candidates
        .Where(c => c.Address.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(c.Address) && !IsLinkLocal(c.Address))
        .OrderByDescending(c => IsPrivate(c.Address))
        .ThenByDescending(c => c.HasGateway)
        .FirstOrDefault()?.Address;

    private static bool IsPrivate(IPAddress address) => address.GetAddressBytes() is [10, ..] or [172, >= 16 and <= 31, ..] or [192, 168, ..];

    private static bool IsLinkLocal(IPAddress address) => address.GetAddressBytes() is [169, 254, ..];
}
