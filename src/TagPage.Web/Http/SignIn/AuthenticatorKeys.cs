using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;

namespace TagPage.Web.Http.SignIn;

/// <summary>What authenticator apps know, unreadable to whoever has the database or a backup without the folder of keys.</summary>
public sealed class AuthenticatorKeys(IDataProtectionProvider protection)
{
    private readonly IDataProtector _protector = protection.CreateProtector("authenticator app");

    public string Seal(string key) => _protector.Protect(key);

    /// <summary>Null where there is none, and where the folder's keys are no longer those it was sealed with.</summary>
    public string? Open(string sealedKey)
    {
        try
        {
            return sealedKey.Length == 0 ? null : _protector.Unprotect(sealedKey);
        }
        catch (CryptographicException)
        {
            return null;
        }
    }
}
