using System.Net;
using System.Net.Sockets;

namespace TagPage.Web.Limits;

/// <summary>Where a request comes from, as limits count it: one IPv4 address, or one IPv6 /64, which is what one household gets.</summary>
public static class Source
{
    public static string Of(HttpContext context) => Of(context.Connection.RemoteIpAddress);

    public static string Of(IPAddress? address)
    {
        if (address is null)
            return "unknown";
        if (address.IsIPv4MappedToIPv6)
            address = address.MapToIPv4();
        return address.AddressFamily == AddressFamily.InterNetwork ? address.ToString() : Network(address) + "/64";
    }

    private static IPAddress Network(IPAddress address)
    {
        var bytes = address.GetAddressBytes();
        bytes.AsSpan(8).Clear();
        return new IPAddress(bytes);
    }
}
