using Dapper;
using TagPage.Web.Data;
using TagPage.Web.Pages.Nudge;

namespace TagPage.Web.Pages.Shop.Nudges;

/// <summary>Reminders and the mails they became, for the owner.</summary>
public sealed class NudgeListStore(Database database)
{
    private const int Most = 100;

    public NudgeRow? Get(long id) => database.Read(c => c.QuerySingleOrDefault<NudgeRow>(GetSql, new { id }));

    private const string GetSql = $"{Columns} WHERE n.id = @id";

    /// <summary>The newest first.</summary>
    public IReadOnlyList<NudgeRow> Newest() => database.Read(c => c.Query<NudgeRow>(NewestSql, new { Most }).ToList());

    private const string NewestSql = $"{Columns} ORDER BY n.id DESC LIMIT @Most";

    private const string Columns = $"""
        SELECT n.id, n.version, n.client_id, c.name AS client, c.language, c.phone, c.mail, c.reminders, n.made_at, n.expires_at,
               n.sent_how, n.sent_at, n.discarded,
               {NudgeStore.Replaced} AS replaced,
               (SELECT COUNT(*) FROM nudge_racket a WHERE a.nudge_id = n.id) AS rackets,
               (SELECT COUNT(a.answer) FROM nudge_racket a WHERE a.nudge_id = n.id) AS answered,
               m.id AS outbox_id, m.state AS outbox_state, COALESCE(m.maybe_sent, 0) AS maybe_sent, m.last_error, m.not_before, COALESCE(m.tries, 0) AS tries
        FROM nudge n
        JOIN client c ON c.id = n.client_id
        LEFT JOIN outbox m ON m.id = (SELECT MAX(o.id) FROM outbox o WHERE o.nudge_id = n.id)
        """;

    /// <summary>Mails of every kind that have not gone out: given up first, then the ones that wait.</summary>
    public IReadOnlyList<MailRow> Unsent() => database.Read(c => c.Query<MailRow>(UnsentSql, new { Most }).ToList());

    private const string UnsentSql = """
        SELECT o.id, o.kind, c.name AS to_name, o.subject, o.state, o.maybe_sent,
               o.tries, o.last_error, o.not_before, o.made_at
        FROM outbox o
        LEFT JOIN client c ON c.id = o.to_client_id
        WHERE o.state <> 'Sent'
        ORDER BY o.state IN ('Queued', 'Leaving'), o.id DESC
        LIMIT @Most
        """;
}
