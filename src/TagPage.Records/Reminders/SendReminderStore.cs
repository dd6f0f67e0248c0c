using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

/// <summary>What happens to a reminder once it is made: sent, noted as sent, withdrawn, tried again. All of it is the shop's.</summary>
public sealed class SendReminderStore(Database database, OutboxStore outbox, ShopStore shops, ShopClock clock)
{
    /// <summary>Puts the mail into the outbox.</summary>
    public Outcome Mail(Who who, long id, string subject, MailText body) => database.WriteAsOwner(who, c =>
    {
        if (Get(c, id) is not { } reminder)
            return new Outcome.Absent();
        if (WhyNot(reminder) is { } why)
            return new Outcome.Refused(why);
        outbox.Queue(c, new NewMail(MailKind.Reminder, reminder.ClientId, subject, body) { ReminderId = id });
        c.Execute(SentSql, new { id, How = nameof(SentHow.Mail), clock.Now });
        return new Outcome.Done(id);
    });

    private Refusal? WhyNot(Row reminder) => reminder switch
    {
        { IsVoid: true } => new ReminderVoid(),
        { Reminders: false } => new RemindersUnwanted(),
        { Mail: null } => new ClientHasNoMail(),
        { IsMailed: true } => new MailedAlready(),
        { IsAnswered: true } => new AnsweredInFull(),
        _ when shops.Get().Mail is null => new ShopHasNoMail(),
        _ => null,
    };

    private sealed record Row
    {
        public long ClientId { get; init; }
        public string? Mail { get; init; }
        public bool Reminders { get; init; }
        public bool IsVoid { get; init; }
        public bool IsMailed { get; init; }
        public bool IsAnswered { get; init; }
    }

    private static Row? Get(SqliteConnection connection, long id) => connection.QuerySingleOrDefault<Row>(GetSql, new { id });

    private const string GetSql = $"""
        SELECT n.client_id, c.mail, c.reminders,
               n.discarded = 1 OR {ReminderStore.Replaced} AS is_void,
               n.mail_fate IN ('Sent', 'MaybeSent') OR EXISTS (SELECT 1 FROM outbox o WHERE o.reminder_id = n.id AND o.state <> 'Failed') AS is_mailed,
               {ReminderStore.AnsweredInFull} AS is_answered
        FROM reminder n
        JOIN client c ON c.id = n.client_id
        WHERE n.id = @id
        """;

    private const string SentSql = "UPDATE reminder SET sent_how = @How, sent_at = @Now WHERE id = @id";

    /// <summary>The owner sent it with an app of their own, which tells us nothing.</summary>
    public Outcome NoteSent(Who who, long id, SentHow how) => database.WriteAsOwner(who, c =>
    {
        if (c.Execute(SentSql, new { id, How = how.ToString(), clock.Now }) == 0)
            return new Outcome.Absent();
        c.Execute(HoldBackSql, new { id, why = "It was sent another way." });
        return new Outcome.Done(id);
    });

    /// <summary>Its link no longer works, and its email is not sent; the link that stops reminders still works.</summary>
    public Outcome Discard(Who who, long id) => database.WriteAsOwner(who, c =>
    {
        if (c.Execute(DiscardSql, new { id }) == 0)
            return new Outcome.Absent();
        c.Execute(HoldBackSql, new { id, why = "The reminder was taken back." });
        return new Outcome.Done(id);
    });

    private const string DiscardSql = "UPDATE reminder SET discarded = 1 WHERE id = @id AND discarded = 0";

    private const string HoldBackSql = $"""
        UPDATE outbox SET state = {DeliveryStore.GivenUp}, last_error = @why WHERE reminder_id = @id AND state = 'Queued'
        """;

    /// <summary>A mail that was given up, or may have gone out, is tried once more from the beginning; a reminder only while it still holds.</summary>
    public Outcome Retry(Who who, long mail) => database.WriteAsOwner(who, c =>
        c.Execute(RetrySql, new { mail, clock.Now }) == 1
            ? new Outcome.Done(mail)
            : new Outcome.Refused(new MailNotGivenUp()));

    private const string RetrySql = $"""
        UPDATE outbox SET {Anew}
        WHERE id = @mail AND state IN ('Failed', 'MaybeSent') AND {StillHolds}
        """;

    /// <summary>SQL: an email of the outbox goes out as if it had never been tried, and nobody has let it go.</summary>
    internal const string Anew = "state = 'Queued', tries = 0, not_before = @Now, last_error = '', let_go = 0";

    /// <summary>SQL: an email of the outbox is no reminder, or one that was neither taken back, replaced, sent another way nor answered in full, to somebody who wants them.</summary>
    internal const string StillHolds = $"""
        (reminder_id IS NULL OR EXISTS (
          SELECT 1 FROM reminder n JOIN client c ON c.id = n.client_id WHERE n.id = outbox.reminder_id AND n.discarded = 0 AND COALESCE(n.sent_how, 'Mail') = 'Mail' AND c.reminders = 1
            AND NOT {ReminderStore.Replaced} AND NOT ({ReminderStore.AnsweredInFull})))
        """;
}
