using System.Security.Cryptography;
using System.Text;

namespace TagPage.Records.Backups;

/// <summary>
/// What a passphrase was made into: PBKDF2-HMAC-SHA-256 with a salt of its own, in as many rounds as OWASP asks for. Kept, it seals each
/// night's backup without the passphrase; the salt goes into every file, so that the passphrase alone opens it.
/// </summary>
public sealed class SealKey
{
    public const int Rounds = 600_000, SaltBytes = 16, KeyBytes = 32;

    private readonly byte[] _key;

    private SealKey(byte[] salt, byte[] key) => (Salt, _key) = (salt, key);

    internal byte[] Salt { get; }

    public static SealKey Of(string passphrase) => Of(passphrase, RandomNumberGenerator.GetBytes(SaltBytes));

    /// <summary>Unicode may write one word in several ways; keyboards differ in which.</summary>
    internal static SealKey Of(string passphrase, byte[] salt, int rounds = Rounds) =>
        new(salt, Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(passphrase.Normalize(NormalizationForm.FormC)), salt, rounds, HashAlgorithmName.SHA256, KeyBytes));

    /// <summary>As <see cref="Stored"/> wrote it; null for anything else.</summary>
    internal static SealKey? Read(byte[] stored) =>
        stored.Length == SaltBytes + KeyBytes ? new SealKey(stored[..SaltBytes], stored[SaltBytes..]) : null;

    internal byte[] Stored => [.. Salt, .. _key];

    /// <summary>A key for one file: no two files share one, so that their counters may begin alike.</summary>
    internal byte[] ForFile(byte[] fileSalt) => HKDF.DeriveKey(HashAlgorithmName.SHA256, _key, KeyBytes, fileSalt, "TagPage sealed backup"u8.ToArray());
}
