using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

/// <summary>
/// Identity's check of codes, with two differences to its own: it goes by the program's clock, and takes no code twice (RFC 6238, 5.2).
/// </summary>
public sealed class AppCodes(AccountStore accounts, TimeProvider clock) : IUserTwoFactorTokenProvider<Account>
{
    /// <summary>Half minutes that a phone's clock may be early or late.</summary>
    private const int Slack = 1;

    public Task<bool> CanGenerateTwoFactorTokenAsync(UserManager<Account> manager, Account user) => Task.FromResult(user.AuthenticatorKey.Length > 0);

    /// <summary>The app makes them.</summary>
    public Task<string> GenerateAsync(string purpose, UserManager<Account> manager, Account user) => Task.FromResult("");

    public async Task<bool> ValidateAsync(string purpose, string token, UserManager<Account> manager, Account user) =>
        await manager.GetAuthenticatorKeyAsync(user) is { } key && StepOf(key, token) is { } step && Use(user, step);

    /// <summary>The code of this half minute was good for something, and is for nothing else.</summary>
    public bool Use(Account user, long step) => accounts.TakeCode(user.Id, step);

    /// <summary>Which half minute a code is of; null where it is of none around now.</summary>
    public long? StepOf(string key, string code)
    {
        var (secret, now) = (Totp.KeyOf(key), Totp.StepAt(clock.GetUtcNow()));
        for (var step = now - Slack; step <= now + Slack; step++)
            if (Totp.Code(secret, step) == code)
                return step;
        return null;
    }
}
