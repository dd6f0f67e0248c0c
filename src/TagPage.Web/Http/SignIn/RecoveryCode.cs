using System.Security.Cryptography;
using System.Text;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// Codes for whoever has lost the phone, as Identity draws them: ten letters out of 23, 45 bits. The hash is slow, since 45 bits could be
/// tried one by one; the account's random id is the salt of all ten, so that one typed code is hashed once.
/// </summary>
public static class RecoveryCode
{
    public const int Count = 10;

    private const int Rounds = 100_000;

    public static string Hash(string account, string typed) => Convert.ToHexString(
        Rfc2898DeriveBytes.Pbkdf2(Plain(typed), Encoding.UTF8.GetBytes(account), Rounds, HashAlgorithmName.SHA256, 16));

    private static string Plain(string typed) => string.Concat(typed.Where(char.IsAsciiLetterOrDigit)).ToUpperInvariant();
}
