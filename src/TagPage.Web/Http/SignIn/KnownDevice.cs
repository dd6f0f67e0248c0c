using System.Security.Cryptography;
using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// A signed cookie of a browser that has signed in before. It grants no access; it only lets its bearer try a password
/// when strangers have used up the account's tries.
/// </summary>
public sealed class KnownDevice(SealedNotes notes, CookieRules cookies)
{
    private const string Cookie = "device";

    private const string Purpose = "known device";

    private static readonly TimeSpan Lifetime = TimeSpan.FromDays(365);

    /// <summary>The device's own random name, or null for a browser not known for this account.</summary>
    public string? Of(HttpContext context, string account) => Read(context, account)?.Device;

    /// <summary>It has signed in since what signs in was last changed. Before that, whoever knew the old password may have held it.</summary>
    public bool IsTrusted(HttpContext context, Account account) => Read(context, account.NormalizedName)?.Stamp == account.SecurityStamp;

    public void Remember(HttpContext context, Account account)
    {
        var device = Of(context, account.NormalizedName) ?? RandomNumberGenerator.GetHexString(32, lowercase: true);
        cookies.Give(context, Cookie, notes.Write(Purpose, account.NormalizedName, device, account.SecurityStamp), Lifetime);
    }

    private (string Device, string Stamp)? Read(HttpContext context, string account) =>
        notes.Read(Purpose, context.Request.Cookies[cookies.Name(Cookie)], Lifetime) is [var known, var device, var stamp] && known == account ? (device, stamp) : null;
}
