using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>
/// The one-time link with which an owner who forgot the password sets a new one. Only somebody who may start the program
/// on this data folder gets one; a newer link voids the older ones.
/// </summary>
public sealed class NewPasswordStore(Database database, TimeProvider clock)
{
    /// <summary>A new token, or null if the shop has no owner yet.</summary>
    public string? NewToken() => database.Write(c => AccountStore.Any(c) ? OneTimeLinkStore.New(c, clock.GetUtcNow()) : null);

    /// <summary>Whose password the link sets; null where it is used, too old or wrong.</summary>
    public Account? OwnerBehind(string token) => database.Read(c => OwnerBehind(c, token));

    private Account? OwnerBehind(SqliteConnection connection, string token) =>
        OneTimeLinkStore.IsOpen(connection, token, clock.GetUtcNow()) ? connection.QueryFirstOrDefault<Account>(OwnerSql) : null;

    private const string OwnerSql = $"""
        SELECT {AccountStore.Columns}
        FROM account
        WHERE role = 'Owner' AND ended_at IS NULL
        ORDER BY made_at
        LIMIT 1
        """;

    /// <summary>
    /// Saves the owner's new password, takes away every other way to sign in and ends every session in one transaction; absent where the
    /// link is no longer open. Whoever forgot the password may have lost the phone as well.
    /// </summary>
    /// <param name="token">Of the link.</param>
    /// <param name="owner">With the new password's hash and stamps.</param>
    public Outcome Set(string token, Account owner) => database.Write<Outcome>(c =>
    {
        if (OwnerBehind(c, token)?.Id != owner.Id)
            return new Outcome.Absent();
        Set(c, owner);
        OneTimeLinkStore.Use(c, token, clock.GetUtcNow());
        return new Outcome.Done(1);
    });

    /// <summary>The account's password as the only way to sign in, and no session; in the caller's transaction.</summary>
    internal static void Set(SqliteConnection connection, Account account)
    {
        connection.Execute(SetSql, new { account.Id, account.PasswordHash, account.SecurityStamp, account.ConcurrencyStamp });
        PasskeyStore.RemoveAll(connection, account.Id);
        SessionStore.EndAll(connection, account.Id);
    }

    private const string SetSql = """
        UPDATE account
        SET password_hash = @PasswordHash, security_stamp = @SecurityStamp, concurrency_stamp = @ConcurrencyStamp,
            two_factor = 0, authenticator_key = '', recovery_hashes = '', pin_hash = ''
        WHERE id = @Id
        """;
}
