using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace TagPage.Records.Storage;

/// <summary>Random text that opens something to whoever has it. Records keep its hash alone.</summary>
internal static class Secret
{
    /// <summary>For addresses and cookies: letters, digits, dash and underscore.</summary>
    /// <param name="bytes">How much of it is random; 16 are 128 bits.</param>
    public static string New(int bytes) => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(bytes));

    /// <summary>SHA-256 in lower-case hexadecimal digits.</summary>
    public static string Hash(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));
}
