using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>PINs with which people change over on shared tablets, as hashes, and how often they were wrong there: kept on file, so that a restart frees nobody.</summary>
public sealed class PinStore(Database database, TimeProvider clock)
{
    /// <summary>So many wrong ones in a row lock a person out of a tablet until they sign in there in full.</summary>
    public const int MostWrong = 5;

    /// <summary>How long a PIN signs in for.</summary>
    public static readonly TimeSpan Lasts = TimeSpan.FromHours(12);

    /// <summary>The first two wrong ones cost nothing; each after them twice the wait of the one before.</summary>
    private static readonly TimeSpan FirstWait = TimeSpan.FromSeconds(5);

    public void Set(string account, string hash) => database.Write(c => Set(c, account, hash));

    /// <summary>An empty one takes it away. Whoever changed over with the old one is signed out.</summary>
    internal static void Set(SqliteConnection connection, string account, string hash) => connection.Execute(SetSql, new { account, hash });

    private const string SetSql = """
        UPDATE account SET pin_hash = @hash WHERE id = @account;
        DELETE FROM session WHERE account_id = @account AND way = 'Pin';
        DELETE FROM pin_try WHERE account_id = @account;
        """;

    public bool Has(string account) => database.Read(c => c.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM account WHERE id = @account AND pin_hash <> '')", new { account }));

    public sealed record Person
    {
        public string Id { get; init; } = "";
        public string Name { get; init; } = "";
        public bool IsLocked { get; init; }
    }

    /// <summary>Those who can change over on a tablet.</summary>
    public IReadOnlyList<Person> People(long tablet) => database.Read(c => c.Query<Person>(PeopleSql, new { tablet, MostWrong }).AsList());

    private const string PeopleSql = """
        SELECT a.id, a.name, COALESCE(t.wrong, 0) >= @MostWrong AS is_locked
        FROM account a
        LEFT JOIN pin_try t ON t.account_id = a.id AND t.tablet_id = @tablet
        WHERE a.pin_hash <> '' AND a.ended_at IS NULL
        ORDER BY a.normalized_name
        """;

    /// <summary>Counts as wrong until <see cref="Forgive"/> says that it was right, so that tries sent at once are not free.</summary>
    /// <returns>Null for somebody without a PIN.</returns>
    public PinTry? Take(long tablet, string account) => database.Write(c => Take(c, tablet, account, clock.GetUtcNow()));

    private static PinTry? Take(SqliteConnection connection, long tablet, string account, DateTimeOffset now)
    {
        if (connection.QuerySingleOrDefault<(string Hash, int Wrong, DateTimeOffset? LastAt, bool Owes)?>(StandsSql, new { tablet, account }) is not var (hash, wrong, last, owes))
            return null;
        if (wrong >= MostWrong)
            return new PinTry { IsLocked = true };
        if (last is { } at && Wait(wrong) - (now - at).Duration() is { Ticks: > 0 } wait)
            return new PinTry { Wait = wait };
        connection.Execute(TakeSql, new { tablet, account, now });
        return new PinTry { Hash = hash, OwesSecondStep = owes };
    }

    /// <summary>Of an account a: a helper who has no codes though the owner wants more than a password.</summary>
    internal const string IsOwed = "(a.role = 'Bench' AND a.two_factor = 0 AND EXISTS (SELECT 1 FROM shop WHERE helpers_second_step = 1))";

    /// <summary>The same, and no passkey either: no PIN stands in for what was never set up.</summary>
    internal const string Owes = $"({IsOwed} AND NOT EXISTS (SELECT 1 FROM passkey k WHERE k.account_id = a.id))";

    private static TimeSpan Wait(int wrong) => wrong < 2 ? TimeSpan.Zero : FirstWait * Math.Pow(2, wrong - 2);

    private const string StandsSql = $"""
        SELECT a.pin_hash, COALESCE(t.wrong, 0), t.last_at, {Owes}
        FROM account a
        LEFT JOIN pin_try t ON t.account_id = a.id AND t.tablet_id = @tablet
        WHERE a.id = @account AND a.pin_hash <> '' AND a.ended_at IS NULL
        """;

    private const string TakeSql = """
        INSERT INTO pin_try (tablet_id, account_id, wrong, last_at) VALUES (@tablet, @account, 1, @now)
        ON CONFLICT (tablet_id, account_id) DO UPDATE SET wrong = wrong + 1, last_at = @now
        """;

    /// <summary>It was right, or they signed in there in full.</summary>
    public void Forgive(long tablet, string account) => database.Write(c =>
        c.Execute("DELETE FROM pin_try WHERE tablet_id = @tablet AND account_id = @account", new { tablet, account }));
}
