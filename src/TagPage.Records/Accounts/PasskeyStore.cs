using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>The passkeys of those who may sign in.</summary>
public sealed class PasskeyStore(Database database)
{
    public const int LongestName = 60;

    /// <summary>Adds one, or notes how often it was used. One that is another account's stays as it is.</summary>
    public void Save(string accountId, PasskeyRow passkey) => database.Write(c => c.Execute(SaveSql, new
    {
        accountId,
        passkey.Id,
        Name = passkey.Name.Length <= LongestName ? passkey.Name : passkey.Name[..LongestName],
        passkey.PublicKey,
        passkey.SignCount,
        passkey.Transports,
        passkey.UserVerified,
        passkey.BackupEligible,
        passkey.BackedUp,
        passkey.Attestation,
        passkey.ClientData,
        passkey.MadeAt,
    }));

    private const string SaveSql = """
        INSERT INTO passkey (id, account_id, name, public_key, sign_count, transports, user_verified, backup_eligible, backed_up, attestation, client_data, made_at)
        VALUES (@Id, @accountId, @Name, @PublicKey, @SignCount, @Transports, @UserVerified, @BackupEligible, @BackedUp, @Attestation, @ClientData, @MadeAt)
        ON CONFLICT (id) DO UPDATE
        SET name = excluded.name, sign_count = excluded.sign_count, user_verified = excluded.user_verified, backed_up = excluded.backed_up
        WHERE account_id = excluded.account_id
        """;

    public IReadOnlyList<PasskeyRow> Of(string accountId) => database.Read(c => c.Query<PasskeyRow>(OfSql, new { accountId }).AsList());

    private const string OfSql = """
        SELECT id, name, public_key, sign_count, transports, user_verified, backup_eligible, backed_up, attestation, client_data, made_at
        FROM passkey
        WHERE account_id = @accountId
        ORDER BY made_at, id
        """;

    /// <summary>Whose it is; null where nobody's.</summary>
    public string? AccountOf(byte[] id) => database.Read(c => c.QuerySingleOrDefault<string>("SELECT account_id FROM passkey WHERE id = @id", new { id }));

    /// <summary>False where it is none of the account's.</summary>
    public bool Remove(string accountId, byte[] id) => database.Write(c => c.Execute(RemoveSql, new { accountId, id })) == 1;

    private const string RemoveSql = "DELETE FROM passkey WHERE account_id = @accountId AND id = @id";

    /// <summary>In the caller's transaction.</summary>
    internal static void RemoveAll(SqliteConnection connection, string accountId) => connection.Execute(RemoveAllSql, new { accountId });

    private const string RemoveAllSql = "DELETE FROM passkey WHERE account_id = @accountId";
}
