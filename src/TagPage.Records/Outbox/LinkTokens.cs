using System.Buffers.Binary;
using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using TagPage.Records.Storage;

namespace TagPage.Records.Outbox;

/// <summary>
/// Makes and reads the tokens of private links. A token is the record's number and an HMAC-SHA256 over purpose,
/// number and the record's own 128 random bits, cut to 128 bits; it is derived again whenever its text is shown or sent
/// and never stored. The key is in the data folder. New random bits make all of a record's older links void, and so
/// does the record's end: no other record has its bits, even under the same number after going back to a backup.
/// </summary>
public sealed class LinkTokens
{
    private const int MacBytes = 16, SecretBytes = 16;

    private readonly byte[] _key;

    public LinkTokens(DataFolder folder) => _key = ServerKey.ReadOrMake(Path.Combine(folder.Keys, "links.key"));

    /// <param name="purpose">What the link may do.</param>
    /// <param name="id">Of the record.</param>
    /// <param name="secret">The record's random bits as 32 hexadecimal digits.</param>
    public string Token(LinkPurpose purpose, long id, string secret) =>
        id.ToString(CultureInfo.InvariantCulture) + "-" + Base64Url.EncodeToString(Mac(purpose, id, secret).AsSpan(0, MacBytes));

    /// <summary>The record a token claims to be for; nothing is proven until <see cref="Fits"/> has seen its secret.</summary>
    public static long? Claimed(string? token) =>
        token?.IndexOf('-', StringComparison.Ordinal) is > 0 and < 20 and var dash
        && long.TryParse(token.AsSpan(0, dash), NumberStyles.None, CultureInfo.InvariantCulture, out var id)
            ? id
            : null;

    public bool Fits(string token, LinkPurpose purpose, long id, string secret) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(token), Encoding.UTF8.GetBytes(Token(purpose, id, secret)));

    /// <summary>Six digits to be typed, derived like the tokens.</summary>
    public string Digits(long id, string secret) =>
        (BinaryPrimitives.ReadUInt64BigEndian(Mac(LinkPurpose.Code, id, secret)) % 1_000_000).ToString("D6", CultureInfo.InvariantCulture);

    /// <summary>Every part of the message has its fixed length, so that no two records ever make the same one.</summary>
    private byte[] Mac(LinkPurpose purpose, long id, string secret)
    {
        Span<byte> message = stackalloc byte[1 + sizeof(long) + SecretBytes];
        message[0] = (byte)purpose;
        BinaryPrimitives.WriteInt64BigEndian(message[1..], id);
        if (Convert.FromHexString(secret, message[(1 + sizeof(long))..], out _, out var written) != System.Buffers.OperationStatus.Done || written != SecretBytes)
            throw new ArgumentException("A record's secret is 32 hexadecimal digits.", nameof(secret));
        return HMACSHA256.HashData(_key, message);
    }
}

/// <summary>What a link may do. A token for one purpose does not work for another; the numbers are part of every link.</summary>
public enum LinkPurpose { Reminder = 1, StopReminders = 2, AnswerFinder = 3, OwnPage = 4, Code = 5, Roll = 6, EventDesk = 7, Invitation = 8 }
