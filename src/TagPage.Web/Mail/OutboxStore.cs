using System.Collections.Immutable;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Web.Data;

namespace TagPage.Web.Mail;

/// <summary>Mail on its way: queued in the transaction that causes it, sent by <see cref="MailRoom"/>.</summary>
public sealed class OutboxStore(Database database, TimeProvider clock)
{
    /// <summary>After this many tries a mail is given up and shown to the owner.</summary>
    public const int MostTries = 8;

    /// <summary>How long sent mails are kept for the owner to look up.</summary>
    private static readonly TimeSpan Kept = TimeSpan.FromDays(30);

    private static readonly TimeSpan[] Pauses =
        [.. new[] { 1, 5, 15, 60, 120, 240, 480 }.Select(m => TimeSpan.FromMinutes(m))];

    public sealed record Row
    {
        public long Id { get; init; }
        public MailKind Kind { get; init; }
        public long? NudgeId { get; init; }
        public string? NudgeSecret { get; init; }
        public string? StopSecret { get; init; }
        public long? LinkId { get; init; }
        public string? LinkSecret { get; init; }
        public long? CodeId { get; init; }
        public string? CodeSecret { get; init; }
        public string MessageId { get; init; } = "";
        public string? ToName { get; init; }
        public string? ToMail { get; init; }
        public string Subject { get; init; } = "";
        /// <summary>As <see cref="MailText"/> stores it.</summary>
        public string Body { get; init; } = "[]";
        public int Tries { get; init; }

        /// <summary>Of the finders' words that a FoundNotice tells: what its links to answer are derived from.</summary>
        public IReadOnlyDictionary<long, string> AnswerSecrets { get; init; } = ImmutableDictionary<long, string>.Empty;
    }

    /// <summary>Puts a mail into the outbox, in the caller's transaction.</summary>
    /// <param name="connection">The caller's, inside its transaction.</param>
    /// <param name="mail">What to send.</param>
    /// <returns>The mail's number.</returns>
    public long Queue(SqliteConnection connection, NewMail mail) => connection.ExecuteScalar<long>(QueueSql, new
    {
        Kind = mail.Kind.ToString(),
        mail.ToClientId,
        mail.NudgeId,
        mail.EventId,
        mail.LinkId,
        mail.CodeId,
        mail.ToAddress,
        MessageId = Guid.NewGuid().ToString("N"),
        mail.Subject,
        Body = mail.Body.Stored,
        NotBefore = mail.NotBefore ?? clock.GetUtcNow(),
        Now = clock.GetUtcNow(),
    });

    private const string QueueSql = """
        INSERT INTO outbox (kind, to_client_id, to_address, nudge_id, event_id, link_id, code_id, message_id, subject, body, not_before, made_at)
        VALUES (@Kind, @ToClientId, @ToAddress, @NudgeId, @EventId, @LinkId, @CodeId, @MessageId, @Subject, @Body, @NotBefore, @Now)
        RETURNING id
        """;

    /// <summary>The oldest mail that may go now, or null. The address is the one on file at this moment.</summary>
    public Row? Next() => database.Read(c => c.QueryFirstOrDefault<Row>(NextSql, new { Now = clock.GetUtcNow() }) is not { } row ? null
        : row.Kind != MailKind.FoundNotice ? row
        : row with { AnswerSecrets = c.Query<(long, string)>(AnswersSql, new { row.Id }).ToDictionary() });

    private const string NextSql = """
        SELECT o.id, o.kind, o.nudge_id, n.secret AS nudge_secret, n.stop_secret, o.link_id, l.secret AS link_secret, o.code_id, k.secret AS code_secret, o.message_id, o.subject, o.body, o.tries,
               CASE o.kind WHEN 'ShopNotice' THEN s.name WHEN 'FinderAnswer' THEN NULL ELSE c.name END AS to_name,
               CASE o.kind WHEN 'ShopNotice' THEN s.mail WHEN 'FinderAnswer' THEN e.reach ELSE COALESCE(o.to_address, c.mail) END AS to_mail
        FROM outbox o
        LEFT JOIN client c ON c.id = o.to_client_id
        LEFT JOIN nudge n ON n.id = o.nudge_id
        LEFT JOIN corner_link l ON l.id = o.link_id
        LEFT JOIN corner_code k ON k.id = o.code_id
        LEFT JOIN found_event e ON e.id = o.event_id
        LEFT JOIN shop s ON s.id = 1
        WHERE o.state = 'Queued' AND o.not_before <= @Now
        ORDER BY o.not_before, o.id
        LIMIT 1
        """;

    private const string AnswersSql = "SELECT id, secret FROM found_event WHERE notice_id = @Id";

    public void Sent(long id) => database.Write(c =>
    {
        c.Execute(SentSql, new { id, Now = clock.GetUtcNow() });
        c.Execute(PruneSql, new { Before = clock.GetUtcNow() - Kept });
    });

    private const string SentSql = "UPDATE outbox SET state = 'Sent', sent_at = @Now, tries = tries + 1, last_error = '' WHERE id = @id";

    private const string PruneSql = """
        UPDATE found_event SET notice_id = NULL
        WHERE notice_id IN (SELECT id FROM outbox WHERE state <> 'Queued' AND made_at < @Before);
        DELETE FROM outbox WHERE state <> 'Queued' AND made_at < @Before;
        """;

    /// <summary>Notes a try that failed; the mail is tried again later unless the refusal was final.</summary>
    public void NotSent(Row mail, string why, bool final) => database.Write(c => c.Execute(NotSentSql, new
    {
        mail.Id,
        Why = why.Length > 300 ? why[..300] : why,
        State = final || mail.Tries + 1 >= MostTries ? "Failed" : "Queued",
        NotBefore = clock.GetUtcNow() + Pauses[Math.Min(mail.Tries, Pauses.Length - 1)],
    }));

    private const string NotSentSql = """
        UPDATE outbox SET state = @State, tries = tries + 1, last_error = @Why, not_before = @NotBefore WHERE id = @Id
        """;
}
