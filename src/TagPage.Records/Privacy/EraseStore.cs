using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Audit;
using TagPage.Records.Import;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.Privacy;

/// <summary>
/// Deletes a client from everything in the data folder except dated backups: records, search words, emails, email files,
/// uploads, and what the write-ahead log still holds. Job counts and money stay, without the person.
/// </summary>
public sealed class EraseStore(Database database, MailFiles files, Uploads uploads, DataFolder folder, TimeProvider clock, ILogger<EraseStore> log)
{
    /// <summary>Files go before the records are gone for good: where that fails or the program ends, the client is still there and deleted at the next try.</summary>
    public void Erase(long client)
    {
        database.Write(c =>
        {
            foreach (var mail in EraseRecords(c, client, clock.GetUtcNow()))
                File.Delete(files.PathOf(mail));
            uploads.RemoveAll();
        });
        database.EmptyLog();
        KeepMarks();
    }

    /// <summary>Beside the backups at once, in case the database is lost before the next one; the night's backup does the same.</summary>
    private void KeepMarks()
    {
        try
        {
            MarkFile.Add(folder.Backups, database.Read(ForgottenMarks.All));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            log.LogError(e, "Who was forgotten could not be noted beside the backups; it is tried again with the next backup.");
        }
    }

    /// <summary>In somebody's transaction, also of an older backup's.</summary>
    /// <returns>The client's emails, which may lie as files.</returns>
    internal static IReadOnlyList<string> EraseRecords(SqliteConnection connection, long client, DateTimeOffset now)
    {
        var mails = connection.Query<string>(MailsSql, new { client }).AsList();
        ForgottenMarks.Keep(connection, client, now);
        connection.Execute(KeepCountsSql, new { client });
        var payer = connection.ExecuteScalar<long?>("SELECT payer_id FROM client WHERE id = @client", new { client });
        connection.Execute(EraseSql, new { client });
        connection.Execute(PayerSql, new { payer });
        AuditStore.Note(connection, AuditEvent.ClientErased, $"client {client}", now);
        return mails;
    }

    private const string MailsSql = """
        SELECT message_id FROM outbox
        WHERE to_client_id = @client OR event_id IN (SELECT id FROM found_event WHERE client_id = @client)
        """;

    private const string Rackets = "(SELECT r.id FROM racket r JOIN player p ON p.id = r.player_id WHERE p.client_id = @client)";

    private const string Jobs = $"(SELECT id FROM job WHERE racket_id IN {Rackets})";

    private const string KeepCountsSql = $"""
        INSERT INTO past_job (ticket, sport, mains_id, crosses_id, received_on, strung_on, done_on, price_minor, paid_on)
        SELECT j.ticket, r.sport, j.mains_id, j.crosses_id, j.received_on, j.strung_on, j.done_on, j.price_minor, j.paid_on
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        WHERE (j.state <> 'Cancelled' OR EXISTS (SELECT 1 FROM payment_share s WHERE s.job_id = j.id)) AND j.id IN {Jobs}
        """;

    // From the leaves to the root; a table that depends on these and is not named here stops the deletion instead of surviving it.
    private const string EraseSql = $"""
        UPDATE found_event SET notice_id = NULL WHERE client_id = @client OR racket_id IN {Rackets};
        DELETE FROM outbox WHERE to_client_id = @client OR event_id IN (SELECT id FROM found_event WHERE client_id = @client OR racket_id IN {Rackets});
        DELETE FROM found_event WHERE client_id = @client OR racket_id IN {Rackets};
        DELETE FROM reminder_racket WHERE racket_id IN {Rackets};
        DELETE FROM reminder WHERE client_id = @client;
        DELETE FROM loan WHERE client_id = @client;
        UPDATE payment_share SET past_ticket = (SELECT ticket FROM job WHERE id = job_id), job_id = NULL WHERE job_id IN {Jobs};
        UPDATE payment SET client_id = NULL, note = '' WHERE client_id = @client;
        UPDATE prepaid SET client_id = NULL, note = '' WHERE client_id = @client;
        UPDATE bill_line SET whose = '', racket = NULL, desk = NULL, words = '', job_id = NULL WHERE job_id IN {Jobs};
        UPDATE bill SET client_id = NULL, to_name = '', to_address = '' WHERE client_id = @client;
        DELETE FROM photo WHERE job_id IN {Jobs};
        DELETE FROM condition WHERE job_id IN {Jobs};
        DELETE FROM feel WHERE job_id IN {Jobs};
        DELETE FROM reading WHERE job_id IN {Jobs};
        DELETE FROM range_confirm WHERE job_id IN {Jobs};
        DELETE FROM job WHERE racket_id IN {Rackets};
        DELETE FROM spec WHERE racket_id IN {Rackets};
        DELETE FROM frame_place WHERE racket_id IN {Rackets};
        DELETE FROM added_mass WHERE racket_id IN {Rackets};
        DELETE FROM logged_hours WHERE racket_id IN {Rackets};
        DELETE FROM pause WHERE player_id IN (SELECT id FROM player WHERE client_id = @client);
        UPDATE tag SET state = 'Retired', retired_at = COALESCE(retired_at, linked_at, made_at), racket_id = NULL, linked_at = NULL WHERE racket_id IN {Rackets};
        UPDATE racket SET came_from_id = NULL WHERE came_from_id IN {Rackets};
        DELETE FROM racket WHERE player_id IN (SELECT id FROM player WHERE client_id = @client);
        DELETE FROM player WHERE client_id = @client;
        DELETE FROM client WHERE id = @client;
        """;

    private const string PayerSql = """
        DELETE FROM outbox
        WHERE bill_id IN (SELECT id FROM bill WHERE payer_id = @payer) AND NOT EXISTS (SELECT 1 FROM client WHERE payer_id = @payer);
        UPDATE bill SET payer_id = NULL, to_name = '', to_address = '' WHERE payer_id = @payer AND NOT EXISTS (SELECT 1 FROM client WHERE payer_id = @payer);
        UPDATE prepaid SET payer_id = NULL, note = '' WHERE payer_id = @payer AND NOT EXISTS (SELECT 1 FROM client WHERE payer_id = @payer);
        UPDATE payment SET payer_id = NULL, note = '' WHERE payer_id = @payer AND NOT EXISTS (SELECT 1 FROM client WHERE payer_id = @payer);
        DELETE FROM payer WHERE id = @payer AND NOT EXISTS (SELECT 1 FROM client WHERE payer_id = @payer);
        """;
}
