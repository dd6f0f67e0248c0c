using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Clients;
using TagPage.Records.Outbox;

namespace TagPage.Records.LostAndFound;

/// <summary>
/// Tells the person who looks after a racket what a finder did: at once, but for showings of the contact within an hour of
/// the last email, which are gathered into one more. Words do not wait, for they may say where the racket is now; they
/// bring along what was being gathered. If no email address is on file, or nobody has it, the shop is told.
/// </summary>
public sealed class FoundNoticeStore(OutboxStore outbox, IFinderMails mails)
{
    private static readonly TimeSpan Gathering = TimeSpan.FromHours(1);

    /// <summary>An email this close to its time may already be on its way.</summary>
    private static readonly TimeSpan Leaving = TimeSpan.FromMinutes(1);

    private sealed record Last
    {
        public long Id { get; init; }
        public MailKind Kind { get; init; }
        public bool IsUntouched { get; init; }
        public DateTimeOffset NotBefore { get; init; }
        public DateTimeOffset LastAt { get; init; }
    }

    /// <summary>In the transaction that logs the event.</summary>
    /// <param name="connection">The caller's.</param>
    /// <param name="to">Who looks after the racket.</param>
    /// <param name="client">Whose racket it is about.</param>
    /// <param name="eventId">What was just logged.</param>
    /// <param name="isUrgent">Words; not a showing.</param>
    /// <param name="at">When that was.</param>
    public void Tell(SqliteConnection connection, Addressee to, long client, long eventId, bool isUrgent, DateTimeOffset at)
    {
        var kind = to.IsReachable ? MailKind.FoundNotice : MailKind.ShopNotice;
        var last = connection.QueryFirstOrDefault<Last>(LastSql, new { client, Kind = kind.ToString() });
        var notice = last is { IsUntouched: true } && last.NotBefore > at + Leaving && last.NotBefore <= at + Gathering
            ? last.Id
            : Queue(connection, kind, client, eventId, isUrgent ? at : Next(last, at));
        if (isUrgent)
            connection.Execute(NowSql, new { notice, at });
        connection.Execute(JoinSql, new { eventId, notice });
        var mail = mails.Acted(kind, to, connection.Query<FoundNoticeRow>(EventsSql, new { notice }).AsList());
        connection.Execute(WriteSql, new { notice, mail.Subject, Body = mail.Body.Stored });
    }

    private const string LastSql = """
        SELECT o.id, o.kind, o.state = 'Queued' AND o.tries = 0 AS is_untouched, o.not_before, COALESCE(o.sent_at, o.not_before) AS last_at
        FROM found_event e
        JOIN outbox o ON o.id = e.notice_id
        WHERE e.client_id = @client AND o.kind = @Kind
        ORDER BY o.id DESC
        LIMIT 1
        """;

    /// <summary>A last email dated further ahead than possible comes from a clock that was wrong, and holds nothing up.</summary>
    private static DateTimeOffset Next(Last? last, DateTimeOffset at) =>
        last is null || last.LastAt + Gathering <= at || last.LastAt > at + Gathering ? at : last.LastAt + Gathering;

    /// <summary>What goes to the shop is tied to its event, so that it goes with the client's records.</summary>
    private long Queue(SqliteConnection connection, MailKind kind, long client, long eventId, DateTimeOffset notBefore) => outbox.Queue(connection,
        new NewMail(kind, kind == MailKind.FoundNotice ? client : null, "", "") { EventId = kind == MailKind.ShopNotice ? eventId : null, NotBefore = notBefore });

    private const string NowSql = "UPDATE outbox SET not_before = @at WHERE id = @notice";

    private const string JoinSql = "UPDATE found_event SET notice_id = @notice WHERE id = @eventId";

    private const string EventsSql = """
        SELECT e.id, e.kind, e.at, e.message, e.contact, r.number, p.name AS player, r.lost_since IS NOT NULL AS is_lost
        FROM found_event e
        JOIN racket r ON r.id = e.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE e.notice_id = @notice
        ORDER BY e.at, e.id
        """;

    private const string WriteSql = "UPDATE outbox SET subject = @Subject, body = @Body WHERE id = @notice";
}
