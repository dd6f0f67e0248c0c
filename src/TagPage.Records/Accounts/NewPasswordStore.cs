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

    private const string OwnerSql = """
        SELECT id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, two_factor
        FROM account
        WHERE role = 'Owner'
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
        c.Execute(SetSql, new { owner.Id, owner.PasswordHash, owner.SecurityStamp, owner.ConcurrencyStamp });
        PasskeyStore.RemoveAll(c, owner.Id);
        SessionStore.EndAll(c, owner.Id);
        OneTimeLinkStore.Use(c, token, clock.GetUtcNow());
        return new Outcome.Done(1);
    });

    private const string SetSql = """
        UPDATE account
        SET password_hash = @PasswordHash, security_stamp = @SecurityStamp, concurrency_stamp = @ConcurrencyStamp,
            two_factor = 0, authenticator_key = '', recovery_hashes = ''
        WHERE id = @Id
        """;
}
