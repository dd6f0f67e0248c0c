using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Outbox;

/// <summary>What became of claimed emails.</summary>
public sealed class DeliveryStore(Database database, TimeProvider clock)
{
    /// <summary>After this many tries a mail is given up and shown to the owner.</summary>
    public const int MostTries = 8;

    /// <summary>How long an email of unknown fate waits before it is sent once more, under the same Message-ID.</summary>
    public static readonly TimeSpan Rest = TimeSpan.FromMinutes(15);

    /// <summary>How long sent mails are kept for the owner to look up.</summary>
    private static readonly TimeSpan Kept = TimeSpan.FromDays(30);

    private static readonly TimeSpan[] Pauses =
        [.. new[] { 1, 5, 15, 60, 120, 240, 480 }.Select(m => TimeSpan.FromMinutes(m))];

    /// <summary>No email waits longer than this for its next try.</summary>
    internal static TimeSpan LongestPause => Pauses[^1];

    /// <summary>SQL: the state of an email that is not sent any more.</summary>
    public const string GivenUp = "CASE maybe_sent WHEN 1 THEN 'MaybeSent' ELSE 'Failed' END";

    public void Sent(long id, DateTimeOffset at) => database.Write(c =>
    {
        c.Execute(SentSql, new { id, at });
        c.Execute(TakenSql, new { id });
        c.Execute(PruneSql, new { Before = clock.GetUtcNow() - Kept });
    });

    private const string SentSql = "UPDATE outbox SET state = 'Sent', sent_at = @at, tries = tries + 1, last_error = '', maybe_sent = 0 WHERE id = @id";

    /// <summary>The address takes email after all.</summary>
    private const string TakenSql = "UPDATE client SET mail_refused = NULL WHERE mail_refused IS NOT NULL AND id = (SELECT to_client_id FROM outbox WHERE id = @id)";

    private const string PruneSql = """
        UPDATE reminder
        SET mail_fate = (SELECT o.state FROM outbox o
                         WHERE o.reminder_id = reminder.id AND o.state NOT IN ('Queued', 'Leaving') AND o.made_at < @Before ORDER BY o.id DESC LIMIT 1)
        WHERE id IN (SELECT reminder_id FROM outbox WHERE reminder_id IS NOT NULL AND state NOT IN ('Queued', 'Leaving') AND made_at < @Before);
        UPDATE found_event SET notice_id = NULL
        WHERE notice_id IN (SELECT id FROM outbox WHERE state NOT IN ('Queued', 'Leaving') AND made_at < @Before);
        DELETE FROM outbox WHERE state NOT IN ('Queued', 'Leaving') AND made_at < @Before;
        """;

    /// <summary>Notes a try that certainly failed; the mail is tried again later unless the refusal was final.</summary>
    /// <param name="mail">The one that was tried.</param>
    /// <param name="why">What the server said.</param>
    /// <param name="final">Trying again would be no use.</param>
    /// <param name="nobodyThere">The server said that nobody has the address.</param>
    public void NotSent(OutboxStore.Row mail, string why, bool final, bool nobodyThere = false) => database.Write(c =>
    {
        c.Execute(NotSentSql, new
        {
            mail.Id,
            Why = Short(why),
            Final = final || mail.Tries + 1 >= MostTries,
            NotBefore = clock.GetUtcNow() + Pauses[Math.Min(mail.Tries, Pauses.Length - 1)],
        });
        if (nobodyThere)
            c.Execute(NobodySql, new { mail.Id, mail.ToMail });
    });

    private const string NobodySql = "UPDATE client SET mail_refused = mail WHERE mail = @ToMail AND id = (SELECT to_client_id FROM outbox WHERE id = @Id)";

    private const string NotSentSql = $"""
        UPDATE outbox SET state = CASE WHEN @Final THEN {GivenUp} ELSE 'Queued' END, tries = tries + 1, last_error = @Why, not_before = @NotBefore
        WHERE id = @Id AND state = 'Leaving'
        """;

    /// <summary>Notes a try whose outcome nobody knows. The first time the email is sent once more after a while, the second time it is not.</summary>
    public void Unknown(long id, string why) => database.Write(c =>
        c.Execute(UnknownSql + " AND id = @id", new { id, Why = Short(why), NotBefore = clock.GetUtcNow() + Rest, MostTries }));

    /// <summary>The same for everything that was on its way when a program ended. Only the program that holds the data folder may say so.</summary>
    public int LeftBehind() => database.Write(c => c.Execute(UnknownSql, new
    {
        Why = "The program was stopped while this email was on its way.",
        NotBefore = clock.GetUtcNow() + Rest,
        MostTries,
    }));

    // A code has run out by the time of a second try.
    private const string UnknownSql = """
        UPDATE outbox
        SET state = CASE WHEN maybe_sent = 1 OR kind = 'OwnPageCode' OR tries + 1 >= @MostTries THEN 'MaybeSent' ELSE 'Queued' END,
            maybe_sent = 1, tries = tries + 1, last_error = @Why, not_before = @NotBefore
        WHERE state = 'Leaving'
        """;

    /// <summary>Nothing of the mail has left: it waits as if it had not been claimed.</summary>
    public void NotTried(long id) => database.Write(c => c.Execute("UPDATE outbox SET state = 'Queued' WHERE id = @id AND state = 'Leaving'", new { id }));

    private static string Short(string why) => why.Length > 300 ? why[..300] : why;
}
