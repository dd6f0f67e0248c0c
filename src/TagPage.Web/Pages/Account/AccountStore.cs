using Dapper;
using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using TagPage.Web.Data;

namespace TagPage.Web.Pages.Account;

/// <summary>The accounts, as ASP.NET Core Identity asks for them.</summary>
public sealed class AccountStore(Database database, TimeProvider clock) : IUserPasswordStore<Account>, IUserSecurityStampStore<Account>
{
    /// <summary>False on a fresh install: nobody can sign in until the shop is set up.</summary>
    public bool Any() => database.Read(Any);

    public static bool Any(SqliteConnection connection) => connection.ExecuteScalar<bool>(AnySql);

    private const string AnySql = "SELECT EXISTS (SELECT 1 FROM account)";

    public Task<IdentityResult> CreateAsync(Account user, CancellationToken cancellationToken)
    {
        database.Write(c => Insert(c, user, clock.GetUtcNow()));
        return Task.FromResult(IdentityResult.Success);
    }

    /// <summary>For callers that make the account in a transaction of their own.</summary>
    public static void Insert(SqliteConnection connection, Account account, DateTimeOffset now) => connection.Execute(InsertSql, new
    {
        account.Id,
        account.Name,
        account.NormalizedName,
        account.PasswordHash,
        account.SecurityStamp,
        account.ConcurrencyStamp,
        account.Role,
        Now = now,
    });

    private const string InsertSql = """
        INSERT INTO account (id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, made_at)
        VALUES (@Id, @Name, @NormalizedName, @PasswordHash, @SecurityStamp, @ConcurrencyStamp, @Role, @Now)
        """;

    public Task<IdentityResult> UpdateAsync(Account user, CancellationToken cancellationToken)
    {
        var next = Guid.NewGuid().ToString("N");
        var saved = database.Write(c => c.Execute(UpdateSql, new
        {
            user.Id,
            user.Name,
            user.NormalizedName,
            user.PasswordHash,
            user.SecurityStamp,
            user.ConcurrencyStamp,
            Next = next,
        }));
        if (saved == 0)
            return Task.FromResult(IdentityResult.Failed(new IdentityErrorDescriber().ConcurrencyFailure()));
        user.ConcurrencyStamp = next;
        return Task.FromResult(IdentityResult.Success);
    }

    private const string UpdateSql = """
        UPDATE account
        SET name = @Name, normalized_name = @NormalizedName, password_hash = @PasswordHash,
            security_stamp = @SecurityStamp, concurrency_stamp = @Next
        WHERE id = @Id AND concurrency_stamp = @ConcurrencyStamp
        """;

    public Task<IdentityResult> DeleteAsync(Account user, CancellationToken cancellationToken)
    {
        database.Write(c => c.Execute(DeleteSql, new { user.Id }));
        return Task.FromResult(IdentityResult.Success);
    }

    private const string DeleteSql = "DELETE FROM account WHERE id = @Id";

    public Task<Account?> FindByIdAsync(string userId, CancellationToken cancellationToken) =>
        Task.FromResult(database.Read(c => c.QuerySingleOrDefault<Account>(ByIdSql, new { userId })));

    private const string ByIdSql = """
        SELECT id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role
        FROM account
        WHERE id = @userId
        """;

    public Task<Account?> FindByNameAsync(string normalizedUserName, CancellationToken cancellationToken) =>
        Task.FromResult(database.Read(c => c.QuerySingleOrDefault<Account>(ByNameSql, new { normalizedUserName })));

    private const string ByNameSql = """
        SELECT id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role
        FROM account
        WHERE normalized_name = @normalizedUserName
        """;

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
