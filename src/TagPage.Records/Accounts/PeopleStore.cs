using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>Those who sign in to the shop area, as the owner sees them. The owner alone may; an owner's account is changed nowhere here.</summary>
public sealed class PeopleStore(Database database, TimeProvider clock)
{
    /// <summary>Those who can sign in first, the owner before the others.</summary>
    public IReadOnlyList<PersonRow> All(Who who) => database.Read(c => c.Query<PersonRow>(AllSql, Values(who, null)).AsList());

    /// <summary>A helper; null for an owner.</summary>
    public PersonRow? Get(Who who, string id) => database.Read(c => c.QuerySingleOrDefault<PersonRow>(GetSql, Values(who, id)));

    private object Values(Who who, string? id) => new { who.IsOwner, id, Now = clock.GetUtcNow(), Oldest = clock.GetUtcNow() - SessionStore.Longest };

    private const string Columns = """
        a.id, a.name, a.role, a.mail, a.signed_in_at, a.ended_at, a.two_factor,
        (SELECT COUNT(*) FROM passkey p WHERE p.account_id = a.id) AS passkeys,
        (SELECT COUNT(*) FROM session s WHERE s.account_id = a.id AND s.made_at > @Oldest) AS sessions,
        (SELECT i.expires_at FROM invitation i WHERE i.account_id = a.id AND i.expires_at > @Now) AS invited_until
        """;

    private const string AllSql = $"""
        SELECT {Columns} FROM account a WHERE @IsOwner ORDER BY a.ended_at IS NOT NULL, a.role = 'Bench', a.normalized_name, a.id
        """;

    private const string GetSql = $"SELECT {Columns} FROM account a WHERE @IsOwner AND a.id = @id AND a.role = 'Bench'";

    /// <summary>A new name and address. Records show the new name, too.</summary>
    public Outcome Change(Who who, string id, HelperEntry input) => database.WriteAsOwner(who, c =>
    {
        if (IsTaken(c, input.NormalizedName, id))
            return new Outcome.Refused(new SignInNameTaken());
        return Done(c.Execute(ChangeSql, new { id, input.Name, input.NormalizedName, input.Mail, Next = Guid.NewGuid().ToString("N") }));
    });

    internal static bool IsTaken(SqliteConnection connection, string normalizedName, string? by) =>
        connection.ExecuteScalar<bool>(TakenSql, new { normalizedName, by });

    private const string TakenSql = "SELECT EXISTS (SELECT 1 FROM account WHERE normalized_name = @normalizedName AND id IS NOT @by AND ended_at IS NULL)";

    private const string ChangeSql = $"""
        UPDATE account SET name = @Name, normalized_name = @NormalizedName, mail = @Mail, concurrency_stamp = @Next WHERE {AHelper}
        """;

    private const string AHelper = "id = @id AND role = 'Bench' AND ended_at IS NULL";

    /// <summary>Signs a helper out everywhere.</summary>
    public Outcome SignOut(Who who, string id) => database.WriteAsOwner(who, c =>
    {
        if (!c.ExecuteScalar<bool>($"SELECT EXISTS (SELECT 1 FROM account WHERE {AHelper})", new { id }))
            return new Outcome.Absent();
        SessionStore.EndAll(c, id);
        return new Outcome.Done(1);
    });

    /// <summary>
    /// Takes a helper's access away for good, with everything that signs in. The account stays for the records' sake; for somebody who
    /// comes back a new one is made.
    /// </summary>
    public Outcome End(Who who, string id) => database.WriteAsOwner(who, c =>
    {
        var ended = c.Execute(EndSql, new { id, Now = clock.GetUtcNow(), Next = Guid.NewGuid().ToString("N") });
        if (ended == 0)
            return new Outcome.Absent();
        c.Execute("DELETE FROM invitation WHERE account_id = @id", new { id });
        PasskeyStore.RemoveAll(c, id);
        SessionStore.EndAll(c, id);
        return new Outcome.Done(1);
    });

    private const string EndSql = $"""
        UPDATE account
        SET ended_at = @Now, mail = NULL, password_hash = '', security_stamp = @Next, concurrency_stamp = @Next,
            two_factor = 0, authenticator_key = '', recovery_hashes = '', pin_hash = ''
        WHERE {AHelper}
        """;

    private static Outcome Done(int changed) => changed == 1 ? new Outcome.Done(1) : new Outcome.Absent();
}
