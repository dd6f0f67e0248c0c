using System.Collections.Immutable;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Outbox;

/// <summary>Email on its way: queued in the transaction that causes it, sent by the mail sender.</summary>
public sealed class OutboxStore(Database database, TimeProvider clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public MailKind Kind { get; init; }
        public long? ReminderId { get; init; }
        public string? ReminderSecret { get; init; }
        public string? StopSecret { get; init; }
        public long? LinkId { get; init; }
        public string? LinkSecret { get; init; }
        public long? CodeId { get; init; }
        public string? CodeSecret { get; init; }
        public long? BillId { get; init; }
        public long? InvitationId { get; init; }
        public string? InvitationSecret { get; init; }
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

    /// <summary>Puts an email into the outbox, in the caller's transaction.</summary>
    /// <param name="connection">The caller's, inside its transaction.</param>
    /// <param name="mail">What to send.</param>
    /// <returns>The mail's number.</returns>
    public long Queue(SqliteConnection connection, NewMail mail) => connection.ExecuteScalar<long>(QueueSql, new
    {
        Kind = mail.Kind.ToString(),
        mail.ToClientId,
        mail.ReminderId,
        mail.EventId,
        mail.LinkId,
        mail.CodeId,
        mail.BillId,
        mail.InvitationId,
        mail.ToAddress,
        MessageId = Guid.NewGuid().ToString("N"),
        mail.Subject,
        Body = mail.Body.Stored,
        NotBefore = mail.NotBefore ?? clock.GetUtcNow(),
        Now = clock.GetUtcNow(),
    });

    private const string QueueSql = """
        INSERT INTO outbox (kind, to_client_id, to_address, reminder_id, event_id, link_id, code_id, bill_id, invitation_id, message_id, subject, body, not_before, made_at)
        VALUES (@Kind, @ToClientId, @ToAddress, @ReminderId, @EventId, @LinkId, @CodeId, @BillId, @InvitationId, @MessageId, @Subject, @Body, @NotBefore, @Now)
        RETURNING id
        """;

    /// <summary>
    /// Claims the next email of a lane, in a write that is committed when this returns: nobody else sends it, and whatever
    /// happens to this program, it is known to have been on its way. Null if none may be sent. The address is
    /// the one on file at this moment.
    /// </summary>
    public Row? Claim(MailLane lane)
    {
        var now = clock.GetUtcNow();
        var wanted = new { lane.Kinds, Now = now, Latest = now + DeliveryStore.LongestPause };
        return database.Read(c => c.ExecuteScalar<bool>(IsWaitingSql, wanted)) ? database.Write(c => Claim(c, wanted)) : null;
    }

    private static Row? Claim(SqliteConnection connection, object wanted)
    {
        connection.Execute(TooLateSql, wanted);
        if (connection.QueryFirstOrDefault<Row>(NextSql, wanted) is not { } row)
            return null;
        connection.Execute("UPDATE outbox SET state = 'Leaving' WHERE id = @Id", new { row.Id });
        return row.Kind != MailKind.FoundNotice ? row : row with { AnswerSecrets = connection.Query<(long, string)>(AnswersSql, new { row.Id }).ToDictionary() };
    }

    /// <summary>Also what was put off by a clock that was ahead then: nothing is put off for longer than the longest pause, or made tomorrow.</summary>
    private const string IsDue = "o.state = 'Queued' AND o.kind IN @Kinds AND (o.not_before <= @Now OR o.not_before > @Latest OR (o.made_at > @Now AND o.tries = 0))";

    private const string IsWaitingSql = $"SELECT EXISTS (SELECT 1 FROM outbox o WHERE {IsDue})";

    /// <summary>An expired code would only be typed in vain.</summary>
    private const string TooLateSql = $"""
        UPDATE outbox SET state = {DeliveryStore.GivenUp}, last_error = 'The code ran out before it could be sent.'
        WHERE state = 'Queued' AND code_id IN (SELECT id FROM own_page_code WHERE expires_at <= @Now)
        """;

    private const string NextSql = $"""
        SELECT o.id, o.kind, o.reminder_id, n.secret AS reminder_secret, n.stop_secret, o.link_id, l.secret AS link_secret, o.code_id, k.secret AS code_secret, o.bill_id, o.invitation_id, i.secret AS invitation_secret, o.message_id, o.subject, o.body, o.tries,
               CASE o.kind WHEN 'ShopNotice' THEN iif(o.to_address IS NULL, s.name, NULL) WHEN 'FinderAnswer' THEN NULL ELSE c.name END AS to_name,
               CASE o.kind WHEN 'ShopNotice' THEN COALESCE(o.to_address, s.mail) WHEN 'FinderAnswer' THEN e.contact ELSE COALESCE(o.to_address, c.mail) END AS to_mail
        FROM outbox o
        LEFT JOIN client c ON c.id = o.to_client_id
        LEFT JOIN reminder n ON n.id = o.reminder_id
        LEFT JOIN own_page_link l ON l.id = o.link_id
        LEFT JOIN own_page_code k ON k.id = o.code_id
        LEFT JOIN invitation i ON i.id = o.invitation_id
        LEFT JOIN found_event e ON e.id = o.event_id
        LEFT JOIN shop s ON s.id = 1
        WHERE {IsDue}
        ORDER BY CASE o.kind WHEN 'OwnPageCode' THEN 0 WHEN 'Reminder' THEN 2 ELSE 1 END, o.not_before, o.id
        LIMIT 1
        """;

    private const string AnswersSql = "SELECT id, secret FROM found_event WHERE notice_id = @Id";
}
