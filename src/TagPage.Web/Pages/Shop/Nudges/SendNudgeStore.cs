using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Web.Data;
using TagPage.Web.Mail;
using TagPage.Web.Pages.Nudge;

namespace TagPage.Web.Pages.Shop.Nudges;

/// <summary>What happens to a reminder after it was made: sent, noted as sent, taken back, tried again.</summary>
public sealed class SendNudgeStore(Database database, OutboxStore outbox, ShopStore shops, ShopClock clock)
{
    /// <summary>Puts the mail into the outbox.</summary>
    public Outcome Mail(long id, string subject, MailText body) => database.Write<Outcome>(c =>
    {
        if (Get(c, id) is not { } nudge)
            return new Outcome.Absent();
        if (WhyNot(nudge) is { } why)
            return new Outcome.Refused("", why);
        outbox.Queue(c, new NewMail(MailKind.Nudge, nudge.ClientId, subject, body) { NudgeId = id });
        c.Execute(SentSql, new { id, How = nameof(SentHow.Mail), clock.Now });
        return new Outcome.Done(id);
    });

    private string? WhyNot(Row nudge) => nudge switch
    {
        { IsVoid: true } => "This reminder was taken back or replaced by a newer one.",
        { Reminders: false } => "This client wants no reminders any more.",
        { Mail: null } => "There is no mail address on file for this client. Add one, or send the text another way.",
        { IsMailed: true } => "The mail of this reminder is on its way or has gone out already.",
        _ when shops.Get().Mail is null => "The shop has no mail address of its own yet. Write it under Settings → The shop.",
        _ => null,
    };

    private sealed record Row
    {
        public long ClientId { get; init; }
        public string? Mail { get; init; }
        public bool Reminders { get; init; }
        public bool IsVoid { get; init; }
        public bool IsMailed { get; init; }
    }

    private static Row? Get(SqliteConnection connection, long id) => connection.QuerySingleOrDefault<Row>(GetSql, new { id });

    private const string GetSql = $"""
        SELECT n.client_id, c.mail, c.reminders,
               n.discarded = 1 OR {NudgeStore.Replaced} AS is_void,
               EXISTS (SELECT 1 FROM outbox o WHERE o.nudge_id = n.id AND o.state <> 'Failed') AS is_mailed
        FROM nudge n
        JOIN client c ON c.id = n.client_id
        WHERE n.id = @id
        """;

    private const string SentSql = "UPDATE nudge SET sent_how = @How, sent_at = @Now WHERE id = @id";

    /// <summary>The owner sent it with an app of their own, which cannot tell us.</summary>
    public Outcome NoteSent(long id, SentHow how) => database.Write<Outcome>(c =>
        c.Execute(SentSql, new { id, How = how.ToString(), clock.Now }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());

    /// <summary>Its link opens nothing any more, and its mail does not go out; the link to stop still works.</summary>
    public Outcome Discard(long id) => database.Write<Outcome>(c =>
    {
        if (c.Execute(DiscardSql, new { id }) == 0)
            return new Outcome.Absent();
        c.Execute(HoldBackSql, new { id });
        return new Outcome.Done(id);
    });

    private const string DiscardSql = "UPDATE nudge SET discarded = 1 WHERE id = @id AND discarded = 0";

    private const string HoldBackSql = $"""
        UPDATE outbox SET state = {MailFateStore.GivenUp}, last_error = 'The reminder was taken back.' WHERE nudge_id = @id AND state = 'Queued'
        """;

    /// <summary>A mail that was given up, or may have gone out, is tried once more from the beginning; a reminder only while it still holds.</summary>
    public Outcome Retry(long mail) => database.Write<Outcome>(c =>
        c.Execute(RetrySql, new { mail, clock.Now }) == 1
            ? new Outcome.Done(mail)
            : new Outcome.Refused("", "This mail cannot be tried again: it is on its way, or its reminder was stopped or taken back."));

    private const string RetrySql = """
        UPDATE outbox SET state = 'Queued', tries = 0, not_before = @Now, last_error = ''
        WHERE id = @mail AND state IN ('Failed', 'MaybeSent')
          AND (nudge_id IS NULL OR EXISTS (
            SELECT 1 FROM nudge n JOIN client c ON c.id = n.client_id WHERE n.id = outbox.nudge_id AND n.discarded = 0 AND c.reminders = 1))
        """;
}
