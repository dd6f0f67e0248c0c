using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

/// <summary>The accounts, as ASP.NET Core Identity asks for them.</summary>
public sealed partial class IdentityAccounts(AccountStore accounts, PasskeyStore passkeys, AuthenticatorKeys keys)
    : IUserPasswordStore<Account>, IUserSecurityStampStore<Account>
{
    public Task<IdentityResult> CreateAsync(Account user, CancellationToken cancellationToken)
    {
        accounts.Add(user);
        return Task.FromResult(IdentityResult.Success);
    }

    public Task<IdentityResult> UpdateAsync(Account user, CancellationToken cancellationToken) => Task.FromResult(
        accounts.Change(user) ? IdentityResult.Success : IdentityResult.Failed(new IdentityErrorDescriber().ConcurrencyFailure()));

    public Task<IdentityResult> DeleteAsync(Account user, CancellationToken cancellationToken)
    {
        accounts.Remove(user.Id);
        return Task.FromResult(IdentityResult.Success);
    }

    public Task<Account?> FindByIdAsync(string userId, CancellationToken cancellationToken) => Task.FromResult(accounts.Get(userId));

    public Task<Account?> FindByNameAsync(string normalizedUserName, CancellationToken cancellationToken) =>
        Task.FromResult(accounts.Named(normalizedUserName));

    public Task<string> GetUserIdAsync(Account user, CancellationToken cancellationToken) => Task.FromResult(user.Id);

    public Task<string?> GetUserNameAsync(Account user, CancellationToken cancellationToken) => Task.FromResult<string?>(user.Name);

    public Task<string?> GetNormalizedUserNameAsync(Account user, CancellationToken cancellationToken) => Task.FromResult<string?>(user.NormalizedName);

    public Task<string?> GetPasswordHashAsync(Account user, CancellationToken cancellationToken) => Task.FromResult<string?>(user.PasswordHash);

    public Task<string?> GetSecurityStampAsync(Account user, CancellationToken cancellationToken) => Task.FromResult<string?>(user.SecurityStamp);

    public Task<bool> HasPasswordAsync(Account user, CancellationToken cancellationToken) => Task.FromResult(user.PasswordHash.Length > 0);

    public Task SetUserNameAsync(Account user, string? userName, CancellationToken cancellationToken)
    {
        user.Name = userName ?? "";
        return Task.CompletedTask;
    }

    public Task SetNormalizedUserNameAsync(Account user, string? normalizedName, CancellationToken cancellationToken)
    {
        user.NormalizedName = normalizedName ?? "";
        return Task.CompletedTask;
    }

    public Task SetPasswordHashAsync(Account user, string? passwordHash, CancellationToken cancellationToken)
    {
        user.PasswordHash = passwordHash ?? "";
        return Task.CompletedTask;
    }

    public Task SetSecurityStampAsync(Account user, string stamp, CancellationToken cancellationToken)
    {
        user.SecurityStamp = stamp;
        return Task.CompletedTask;
    }

    void IDisposable.Dispose()
    {
    }
}
