using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

public sealed partial class IdentityAccounts : IUserTwoFactorStore<Account>, IUserAuthenticatorKeyStore<Account>, IUserTwoFactorRecoveryCodeStore<Account>
{
    public Task<bool> GetTwoFactorEnabledAsync(Account user, CancellationToken cancellationToken) => Task.FromResult(user.TwoFactor);

    public Task SetTwoFactorEnabledAsync(Account user, bool enabled, CancellationToken cancellationToken)
    {
        user.TwoFactor = enabled;
        return Task.CompletedTask;
    }

    public Task<string?> GetAuthenticatorKeyAsync(Account user, CancellationToken cancellationToken) => Task.FromResult(keys.Open(user.AuthenticatorKey));

    public Task SetAuthenticatorKeyAsync(Account user, string key, CancellationToken cancellationToken)
    {
        user.AuthenticatorKey = keys.Seal(key);
        return Task.CompletedTask;
    }

    public Task ReplaceCodesAsync(Account user, IEnumerable<string> recoveryCodes, CancellationToken cancellationToken)
    {
        Keep(user, recoveryCodes.Select(code => RecoveryCode.Hash(user.Id, code)));
        return Task.CompletedTask;
    }

    /// <summary>Identity saves the account next, which fails where another request took a code of it meanwhile.</summary>
    public Task<bool> RedeemCodeAsync(Account user, string code, CancellationToken cancellationToken)
    {
        var (left, hash) = (Left(user), RecoveryCode.Hash(user.Id, code));
        Keep(user, left.Where(kept => kept != hash));
        return Task.FromResult(left.Contains(hash));
    }

    public Task<int> CountCodesAsync(Account user, CancellationToken cancellationToken) => Task.FromResult(Left(user).Length);

    private static string[] Left(Account user) => user.RecoveryHashes.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static void Keep(Account user, IEnumerable<string> hashes) => user.RecoveryHashes = string.Join(' ', hashes);
}
