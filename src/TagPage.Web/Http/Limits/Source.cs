using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Text;

namespace TagPage.Web.Http.Limits;

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

    /// <summary>Stands for a source: the same letters for the same one, and no way back to it without the key.</summary>
    /// <param name="context">The request.</param>
    /// <param name="key">A secret of 32 bytes.</param>
    /// <param name="bytes">How long, up to 32.</param>
    public static string Mark(HttpContext context, byte[] key, int bytes) =>
        Convert.ToHexStringLower(HMACSHA256.HashData(key, Encoding.UTF8.GetBytes(Of(context))).AsSpan(0, bytes));

    private static IPAddress Network(IPAddress address)
    {
        var bytes = address.GetAddressBytes();
        bytes.AsSpan(8).Clear();
        return new IPAddress(bytes);
    }
}
