using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.Shop;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Http.SignIn;

/// <summary>The second step of signing in: a code of an authenticator app, or one of the recovery codes.</summary>
public sealed class SecondFactor(
    UserManager<Account> users, AppCodes codes, AuthenticatorKeys keys, CodeLimits limits, KnownDevice devices, ShopStore shops, SecurityLog log)
{
    /// <param name="Way">By what; null where the code was wrong.</param>
    /// <param name="Wait">Above zero where nothing was checked, since too much was tried before.</param>
    public readonly record struct Check(SignInWay? Way, TimeSpan Wait);

    /// <summary>For an app to be set up with; nothing is saved.</summary>
    public string NewKey() => users.GenerateNewAuthenticatorKey();

    /// <summary>What apps read from a square: the shop, who signs in there, and the key.</summary>
    public string LinkOf(Account account, string key)
    {
        var issuer = Uri.EscapeDataString(shops.Get().Name is { Length: > 0 } name ? name : "TagPage");
        return $"otpauth://totp/{issuer}:{Uri.EscapeDataString(account.Name)}?secret={key}&issuer={issuer}&digits={Totp.Digits}";
    }

    /// <summary>Switches it on, which ends the sessions begun before.</summary>
    /// <returns>The recovery codes, which are never shown again; null, and nothing is changed, where the code is not of this key.</returns>
    public async Task<IReadOnlyList<string>?> TurnOn(Account account, string key, string code)
    {
        if (codes.StepOf(key, Digits(code)) is not { } step)
            return null;
        account.AuthenticatorKey = keys.Seal(key);
        var recovery = await NewCodes(account);
        Demand(await users.SetTwoFactorEnabledAsync(account, true));
        codes.Use(account, step);
        return recovery;
    }

    /// <summary>Ten new ones; those given out before are void.</summary>
    public async Task<IReadOnlyList<string>> NewCodes(Account account) =>
        [.. await users.GenerateNewTwoFactorRecoveryCodesAsync(account, RecoveryCode.Count) ?? throw new InvalidOperationException("The account was changed meanwhile.")];

    public async Task TurnOff(Account account)
    {
        (account.AuthenticatorKey, account.RecoveryHashes) = ("", "");
        Demand(await users.SetTwoFactorEnabledAsync(account, false));
    }

    public Task<int> CodesLeft(Account account) => users.CountRecoveryCodesAsync(account);

    /// <summary>Tries what was typed, as a code of the app if it is six digits, else as a recovery code, which is used up by it.</summary>
    public async Task<Check> Try(HttpContext context, Account account, string typed)
    {
        var device = devices.Of(context, account.NormalizedName);
        if (limits.Take(account.Id, device) is { Ticks: > 0 } wait)
        {
            log.Note(context, AuditEvent.CodeRefused, account.Id);
            return new Check(null, wait);
        }
        var way = await WayOf(account, typed);
        if (way is null)
            log.Note(context, AuditEvent.CodeWrong, account.Id);
        else
            limits.Forgive(account.Id, device);
        return new Check(way, TimeSpan.Zero);
    }

    private async Task<SignInWay?> WayOf(Account account, string typed)
    {
        if (Digits(typed) is { Length: Totp.Digits } code && code.All(char.IsAsciiDigit))
            return await users.VerifyTwoFactorTokenAsync(account, TokenOptions.DefaultAuthenticatorProvider, code) ? SignInWay.AppCode : null;
        return (await users.RedeemTwoFactorRecoveryCodeAsync(account, typed)).Succeeded ? SignInWay.RecoveryCode : null;
    }

    private static string Digits(string typed) => typed.Replace(" ", "", StringComparison.Ordinal);

    private static void Demand(IdentityResult result)
    {
        if (!result.Succeeded)
            throw new InvalidOperationException(result.ToString());
    }
}
