using System.Buffers.Binary;
using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using TagPage.Web.Data;

namespace TagPage.Web.Mail;

/// <summary>
/// Makes and reads the tokens of links with power. A token is the record's number and an HMAC-SHA256 over purpose,
/// number and version, cut to 128 bits; it is derived anew whenever its text is shown or sent and never stored. The
/// key lies in the data folder. Raising a record's version makes all its older links void.
/// </summary>
public sealed class LinkKeys
{
    private const int MacBytes = 16;

    private readonly byte[] _key;

    public LinkKeys(DataFolder folder) => _key = ServerKey.ReadOrMake(Path.Combine(folder.Keys, "links.key"));

    public string Token(LinkPurpose purpose, long id, int version) =>
        id.ToString(CultureInfo.InvariantCulture) + "-" + Base64Url.EncodeToString(Mac(purpose, id, version));

    /// <summary>The record a token claims to be for; nothing is proven until <see cref="Fits"/> has seen its version.</summary>
    public static long? Claimed(string? token) =>
        token?.IndexOf('-', StringComparison.Ordinal) is > 0 and < 20 and var dash
        && long.TryParse(token.AsSpan(0, dash), NumberStyles.None, CultureInfo.InvariantCulture, out var id)
            ? id
            : null;

    public bool Fits(string token, LinkPurpose purpose, long id, int version) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(token), Encoding.UTF8.GetBytes(Token(purpose, id, version)));

    /// <summary>Six digits to be typed, derived like the tokens; the salt is the record's own.</summary>
    public string Digits(long id, string salt) =>
        (BinaryPrimitives.ReadUInt64BigEndian(HMACSHA256.HashData(_key, Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"code|{id}|{salt}")))) % 1_000_000)
        .ToString("D6", CultureInfo.InvariantCulture);

    private ReadOnlySpan<byte> Mac(LinkPurpose purpose, long id, int version) =>
        HMACSHA256.HashData(_key, Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{purpose}|{id}|{version}"))).AsSpan(0, MacBytes);
}

/// <summary>What a link may do. A token of one purpose is worth nothing for another.</summary>
public enum LinkPurpose { Nudge, StopNudges, AnswerFinder, Corner }
