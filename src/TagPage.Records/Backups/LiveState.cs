using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Jobs;
using TagPage.Records.Privacy;

namespace TagPage.Records.Backups;

/// <summary>What going back to a backup does not wind back: who signs in, who was forgotten, and which numbers were given out.</summary>
internal sealed record LiveState
{
    public sealed record Account(string Id, string Name, string Normalized, string Hash, string Stamp, string Concurrency, string Role, long TwoFactor, string AuthenticatorKey, long CodeStep, string RecoveryHashes, string MadeAt, string? Mail, string? SignedInAt, string? EndedAt, string PinHash);

    public sealed record Session(string Id, string Account, string Way, string Browser, string MadeAt);

    public sealed record Passkey(
        byte[] Id, string Account, string Name, byte[] PublicKey, long SignCount, string Transports, long UserVerified, long BackupEligible, long BackedUp,
        byte[] Attestation, byte[] ClientData, string MadeAt);

    public sealed record AuditLine(long Id, long Event, string Detail, string MadeBy, long Times, string FirstAt, string LastAt);

    /// <summary>Its columns have no type, so that a constructor cannot be found by it.</summary>
    public sealed record Number
    {
        public string Table { get; init; } = "";
        public long Last { get; init; }
    }

    public IReadOnlyList<string> Marks { get; private init; } = [];

    /// <summary>When each client is to be forgotten; null for those who are not.</summary>
    public IReadOnlyDictionary<string, string?> ForgetAt { get; private init; } = new Dictionary<string, string?>();

    public IReadOnlyList<Number> Numbers { get; private init; } = [];

    /// <summary>The highest ticket that was given out.</summary>
    public long LastTicket { get; private init; }

    public IReadOnlyList<Account> Accounts { get; private init; } = [];

    public IReadOnlyList<Session> Sessions { get; private init; } = [];

    public IReadOnlyList<Passkey> Passkeys { get; private init; } = [];

    public IReadOnlyList<AuditLine> Audit { get; private init; } = [];

    public static LiveState Of(SqliteConnection connection) => new()
    {
        Marks = ForgottenMarks.All(connection),
        ForgetAt = connection.Query<(string Secret, string? At)>("SELECT secret, forget_at FROM client").ToDictionary(c => c.Secret, c => c.At),
        Numbers = connection.Query<Number>("SELECT name AS \"table\", seq AS last FROM sqlite_sequence").AsList(),
        LastTicket = connection.ExecuteScalar<long>($"SELECT {RequestedJob.NextTicket} - 1"),
        Accounts = connection.Query<Account>(AccountsSql).AsList(),
        Sessions = connection.Query<Session>("SELECT id, account_id AS account, way, browser, made_at FROM session WHERE way <> 'Pin'").AsList(),
        Passkeys = connection.Query<Passkey>(PasskeysSql).AsList(),
        Audit = connection.Query<AuditLine>("SELECT id, event, detail, made_by, times, first_at, last_at FROM audit").AsList(),
    };

    private const string PasskeysSql = """
        SELECT id, account_id AS account, name, public_key, sign_count, transports, user_verified, backup_eligible, backed_up, attestation, client_data, made_at
        FROM passkey
        """;

    private const string AccountsSql = """
        SELECT id, name, normalized_name AS normalized, password_hash AS hash, security_stamp AS stamp, concurrency_stamp AS concurrency, role,
               two_factor, authenticator_key, code_step, recovery_hashes, made_at, mail, signed_in_at, ended_at, pin_hash
        FROM account
        """;
}
