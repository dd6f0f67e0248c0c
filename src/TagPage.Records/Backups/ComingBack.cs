using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.Jobs;
using TagPage.Records.Privacy;

namespace TagPage.Records.Backups;

/// <summary>What is put right in older records before they become the live ones.</summary>
internal static class ComingBack
{
    /// <param name="connection">Of the older records, in a transaction.</param>
    /// <param name="marks">Of everybody who was forgotten, from wherever they are known.</param>
    /// <param name="live">What is not wound back; null where nothing is left of the live data.</param>
    /// <param name="file">The backup's name, for the owner's list of what happened.</param>
    /// <param name="account">Who goes back to it; empty from the command line.</param>
    /// <param name="now">Now.</param>
    public static void Settle(SqliteConnection connection, IReadOnlyList<string> marks, LiveState? live, string file, string account, DateTimeOffset now)
    {
        ForgottenMarks.Add(connection, marks, now);
        foreach (var client in ForgottenMarks.BroughtBack(connection, ForgottenMarks.All(connection)))
            EraseStore.EraseRecords(connection, client, now);
        connection.Execute(QuietSql, new { now });
        // Browsers that were signed out since would be signed in again.
        EverySessionStore.End(connection);
        connection.Execute("DELETE FROM own_page_code");
        if (live is not null)
            KeepLive(connection, live, now);
        AuditStore.Note(connection, AuditEvent.WentBack, file, now, account);
    }

    // What waited to be sent when the backup was made has been sent since, or not: nobody knows, and nothing goes out twice by itself.
    private const string QuietSql = """
        UPDATE outbox SET state = 'MaybeSent', maybe_sent = 1, last_error = 'An older backup came back, which did not know whether this email had been sent.'
        WHERE state IN ('Queued', 'Leaving');
        UPDATE reminder_batch SET stopped_at = @now WHERE stopped_at IS NULL;
        """;

    private static void KeepLive(SqliteConnection connection, LiveState live, DateTimeOffset now)
    {
        KeepRequests(connection, live.ForgetAt);
        connection.Execute(NumberSql, live.Numbers);
        connection.Execute(TicketSql, new { live.LastTicket });
        connection.Execute("DELETE FROM audit");
        connection.Execute(AuditSql, live.Audit);
        if (live.Accounts.Count == 0)
            return;
        // Whoever is unknown by now can no longer sign in; what they did stays theirs.
        connection.Execute("UPDATE account SET ended_at = COALESCE(ended_at, @now)", new { now });
        connection.Execute("DELETE FROM passkey");
        connection.Execute(AccountSql, live.Accounts);
        connection.Execute("INSERT INTO session (id, account_id, way, browser, made_at) VALUES (@Id, @Account, @Way, @Browser, @MadeAt)", live.Sessions);
        connection.Execute(PasskeySql, live.Passkeys);
    }

    /// <summary>Who asked to be forgotten since, or took that back, need not ask again.</summary>
    private static void KeepRequests(SqliteConnection connection, IReadOnlyDictionary<string, string?> live)
    {
        var changed = connection.Query<(long Id, string Secret, string? At)>("SELECT id, secret, forget_at FROM client")
            .Where(c => live.TryGetValue(c.Secret, out var at) && at != c.At).Select(c => new { c.Id, At = live[c.Secret] }).ToList();
        connection.Execute("UPDATE client SET forget_at = @At WHERE id = @Id", changed);
    }

    // A number that was given out once is not given to somebody else.
    private const string NumberSql = """
        INSERT INTO sqlite_sequence (name, seq) SELECT @Table, 0 WHERE NOT EXISTS (SELECT 1 FROM sqlite_sequence WHERE name = @Table);
        UPDATE sqlite_sequence SET seq = MAX(seq, @Last) WHERE name = @Table;
        """;

    private const string TicketSql = $"INSERT INTO deleted_ticket (ticket) SELECT @LastTicket WHERE @LastTicket >= {RequestedJob.NextTicket}";

    private const string AccountSql = """
        INSERT INTO account (id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role,
                             two_factor, authenticator_key, code_step, recovery_hashes, made_at, mail, signed_in_at, ended_at, pin_hash)
        VALUES (@Id, @Name, @Normalized, @Hash, @Stamp, @Concurrency, @Role, @TwoFactor, @AuthenticatorKey, @CodeStep, @RecoveryHashes, @MadeAt, @Mail, @SignedInAt, @EndedAt, @PinHash)
        ON CONFLICT (id) DO UPDATE
        SET name = excluded.name, normalized_name = excluded.normalized_name, password_hash = excluded.password_hash, security_stamp = excluded.security_stamp,
            concurrency_stamp = excluded.concurrency_stamp, role = excluded.role, two_factor = excluded.two_factor, authenticator_key = excluded.authenticator_key,
            code_step = excluded.code_step, recovery_hashes = excluded.recovery_hashes, mail = excluded.mail, signed_in_at = excluded.signed_in_at, ended_at = excluded.ended_at, pin_hash = excluded.pin_hash
        """;

    private const string AuditSql = "INSERT INTO audit (id, event, detail, made_by, times, first_at, last_at) VALUES (@Id, @Event, @Detail, @MadeBy, @Times, @FirstAt, @LastAt)";

    private const string PasskeySql = """
        INSERT INTO passkey (id, account_id, name, public_key, sign_count, transports, user_verified, backup_eligible, backed_up, attestation, client_data, made_at)
        VALUES (@Id, @Account, @Name, @PublicKey, @SignCount, @Transports, @UserVerified, @BackupEligible, @BackedUp, @Attestation, @ClientData, @MadeAt)
        """;
}
