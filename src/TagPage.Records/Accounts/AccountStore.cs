using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>Those who may sign in to the shop area.</summary>
public sealed class AccountStore(Database database, TimeProvider clock)
{
    /// <summary>SQL: more than one person signs in, or did. As long as it is one, nobody needs to be told who did something.</summary>
    internal const string Several = "(SELECT COUNT(*) FROM account) > 1";

    /// <summary>False on a new install: nobody can sign in until the shop is set up.</summary>
    public bool Any() => database.Read(Any);

    public static bool Any(SqliteConnection connection) => connection.ExecuteScalar<bool>(AnySql);

    private const string AnySql = "SELECT EXISTS (SELECT 1 FROM account)";

    /// <summary>Records then say who did something.</summary>
    public bool AreSeveral() => database.Read(c => c.ExecuteScalar<bool>("SELECT " + Several));

    public void Add(Account account) => database.Write(c => Insert(c, account, clock.GetUtcNow()));

    /// <summary>For callers that create the account in a transaction of their own.</summary>
    public static void Insert(SqliteConnection connection, Account account, DateTimeOffset now) => connection.Execute(InsertSql, new
    {
        account.Id,
        account.Name,
        account.NormalizedName,
        account.PasswordHash,
        account.SecurityStamp,
        account.ConcurrencyStamp,
        account.Role,
        account.Mail,
        Now = now,
    });

    private const string InsertSql = """
        INSERT INTO account (id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, mail, made_at)
        VALUES (@Id, @Name, @NormalizedName, @PasswordHash, @SecurityStamp, @ConcurrencyStamp, @Role, @Mail, @Now)
        """;

    /// <summary>False, and nothing is changed, where somebody else saved the account since it was read.</summary>
    public bool Change(Account account)
    {
        var next = Guid.NewGuid().ToString("N");
        var saved = database.Write(c => c.Execute(UpdateSql, new
        {
            account.Id,
            account.Name,
            account.NormalizedName,
            account.PasswordHash,
            account.SecurityStamp,
            account.ConcurrencyStamp,
            account.TwoFactor,
            account.AuthenticatorKey,
            account.RecoveryHashes,
            Next = next,
        }));
        if (saved == 1)
            account.ConcurrencyStamp = next;
        return saved == 1;
    }

    private const string UpdateSql = """
        UPDATE account
        SET name = @Name, normalized_name = @NormalizedName, password_hash = @PasswordHash,
            security_stamp = @SecurityStamp, concurrency_stamp = @Next,
            two_factor = @TwoFactor, authenticator_key = @AuthenticatorKey, recovery_hashes = @RecoveryHashes
        WHERE id = @Id AND concurrency_stamp = @ConcurrencyStamp
        """;

    /// <summary>Takes the code of an authenticator app that is of this span of time; false where that one or a later one was taken before.</summary>
    public bool TakeCode(string id, long step) => database.Write(c => c.Execute(TakeCodeSql, new { id, step })) == 1;

    private const string TakeCodeSql = "UPDATE account SET code_step = @step WHERE id = @id AND code_step < @step";

    public void Remove(string id) => database.Write(c => c.Execute(DeleteSql, new { id }));

    private const string DeleteSql = "DELETE FROM account WHERE id = @id";

    internal const string Columns = "id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, mail, signed_in_at, two_factor, authenticator_key, recovery_hashes";

    /// <summary>Null for one whose access was taken away, too.</summary>
    public Account? Get(string id) => database.Read(c => c.QuerySingleOrDefault<Account>(ByIdSql, new { id }));

    private const string ByIdSql = $"""
        SELECT {Columns} FROM account WHERE id = @id AND ended_at IS NULL
        """;

    public Account? Named(string normalizedName) => database.Read(c => c.QuerySingleOrDefault<Account>(ByNameSql, new { normalizedName }));

    private const string ByNameSql = $"""
        SELECT {Columns} FROM account WHERE normalized_name = @normalizedName AND ended_at IS NULL
        """;
}
