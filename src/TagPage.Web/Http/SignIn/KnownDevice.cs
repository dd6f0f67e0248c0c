using System.Globalization;
using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// A signed cookie of a browser that has signed in before. It grants no access; it only lets its bearer try a password
/// when strangers have used up the account's tries.
/// </summary>
public sealed class KnownDevice(IDataProtectionProvider protection, CookieRules cookies, TimeProvider clock)
{
    private const string Cookie = "device";

    private static readonly TimeSpan Lifetime = TimeSpan.FromDays(365);

    private readonly IDataProtector _protector = protection.CreateProtector("known device");

    /// <summary>The device's own random name, or null for a browser not known for this account.</summary>
    public string? Of(HttpContext context, string account)
    {
        if (!context.Request.Cookies.TryGetValue(cookies.Name(Cookie), out var value) || Read(value) is not [var known, var device, var since])
            return null;
        var age = clock.GetUtcNow() - DateTimeOffset.Parse(since, CultureInfo.InvariantCulture);
        return known == account && age < Lifetime ? device : null;
    }

    public void Remember(HttpContext context, string account)
    {
        var device = Of(context, account) ?? RandomNumberGenerator.GetHexString(32, lowercase: true);
        var value = string.Join('\n', account, device, clock.GetUtcNow().ToString("O", CultureInfo.InvariantCulture));
        cookies.Give(context, Cookie, _protector.Protect(value), Lifetime);
    }

    private string[]? Read(string value)
    {
        try
        {
            return _protector.Unprotect(value).Split('\n');
        }
        catch (CryptographicException)
        {
            return null;
        }
    }
}
