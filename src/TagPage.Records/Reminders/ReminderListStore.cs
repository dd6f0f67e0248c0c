using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

/// <summary>Reminders and the emails they became, for the owner.</summary>
public sealed class ReminderListStore(Database database)
{
    private const int Most = 100;

    public ReminderRow? Get(long id) => database.Read(c => c.QuerySingleOrDefault<ReminderRow>(GetSql, new { id }));

    private const string GetSql = $"{Columns} WHERE n.id = @id";

    /// <summary>The newest first.</summary>
    public IReadOnlyList<ReminderRow> Newest() => database.Read(c => c.Query<ReminderRow>(NewestSql, new { Most }).ToList());

    private const string NewestSql = $"{Columns} ORDER BY n.id DESC LIMIT @Most";

    /// <summary>Those that a batch made.</summary>
    public IReadOnlyList<ReminderRow> OfBatch(long batch) => database.Read(c => c.Query<ReminderRow>(OfBatchSql, new { batch }).ToList());

    private const string OfBatchSql = $"{Columns} WHERE n.id IN (SELECT reminder_id FROM reminder_batch_client WHERE batch_id = @batch)";

    private const string Columns = $"""
        SELECT n.id, n.secret, n.stop_secret, n.client_id, c.name AS client, c.language, c.phone, c.mail, c.reminders, n.made_at, n.expires_at,
               n.sent_how, n.sent_at, n.discarded,
               {ReminderStore.Replaced} AS replaced,
               {ReminderStore.RacketsAskedAbout} AS rackets,
               {ReminderStore.AnswersGiven} AS answered,
               m.id AS outbox_id, COALESCE(m.state, n.mail_fate) AS outbox_state, COALESCE(m.maybe_sent, 0) AS maybe_sent, m.last_error, m.not_before, COALESCE(m.tries, 0) AS tries
        FROM reminder n
        JOIN client c ON c.id = n.client_id
        LEFT JOIN outbox m ON m.id = (SELECT MAX(o.id) FROM outbox o WHERE o.reminder_id = n.id)
        """;

    /// <summary>Mails of every kind that have not gone out: given up first, then the ones that wait.</summary>
    public IReadOnlyList<MailRow> Unsent() => database.Read(c => c.Query<MailRow>(UnsentSql, new { Most }).ToList());

    private const string UnsentSql = $"""
        SELECT o.id, o.kind, c.name AS to_name, o.subject, o.state, o.maybe_sent,
               o.tries, o.last_error, o.not_before, o.made_at,
               EXISTS (SELECT 1 FROM outbox WHERE outbox.id = o.id AND {SendReminderStore.StillHolds}) AS still_holds
        FROM outbox o
        LEFT JOIN client c ON c.id = o.to_client_id
        WHERE o.state <> 'Sent'
          AND NOT EXISTS (SELECT 1 FROM reminder n WHERE n.id = o.reminder_id AND n.sent_how <> 'Mail')
        ORDER BY o.state IN ('Queued', 'Leaving'), o.id DESC
        LIMIT @Most
        """;
}
