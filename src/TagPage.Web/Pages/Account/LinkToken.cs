using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace TagPage.Web.Pages.Account;

/// <summary>The secret part of a one-time link, 192 random bits. Only its hash is kept.</summary>
internal static class LinkToken
{
    public static readonly TimeSpan Lifetime = TimeSpan.FromMinutes(30);

    public static string Draw() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(24));

    public static string Hash(string token) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(token)));
}
