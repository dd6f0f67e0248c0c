using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Http.SignIn;

/// <summary>Signing in by passkey, by Identity's own check of Web Authentication. The device asks for a finger, a face or a PIN, so no code follows.</summary>
public sealed class PasskeySignIn(SignInManager<Account> cookies, UserManager<Account> users, UsedAnswers used, SecurityLog log)
{
    /// <summary>What the browser asks its devices for, as JSON. Nobody is named: the device knows whose passkeys it has.</summary>
    public Task<string> Options() => cookies.MakePasskeyRequestOptionsAsync(null);

    /// <summary>Who signs in by what the browser has answered; null where nobody does.</summary>
    public async Task<Account?> AccountOf(HttpContext context, string? credential)
    {
        var result = await Check(credential);
        if (result is not { Succeeded: true } || !used.TryUse(credential!))
        {
            log.Note(context, AuditEvent.PasskeyRefused);
            return null;
        }
        return (await users.AddOrUpdatePasskeyAsync(result.User, result.Passkey)).Succeeded ? result.User : null;
    }

    private async Task<PasskeyAssertionResult<Account>?> Check(string? credential)
    {
        try
        {
            return string.IsNullOrEmpty(credential) ? null : await cookies.PerformPasskeyAssertionAsync(credential);
        }
        catch (InvalidOperationException)
        {
            // Nothing was asked for in this browser, or too long ago.
            return null;
        }
    }
}
