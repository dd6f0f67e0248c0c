using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.DueDates;
using TagPage.Records.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

/// <summary>What a reminder's private links open: the household's rackets, and no way to reach anybody.</summary>
public sealed class ReminderStore(Database database, LinkTokens keys, ShopClock clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public string Secret { get; init; } = "";
        public string StopSecret { get; init; } = "";
        public long ClientId { get; init; }
        public bool Reminders { get; init; }
        public DateTimeOffset ExpiresAt { get; init; }
        public bool Discarded { get; init; }

        /// <summary>A newer reminder to the household took its place.</summary>
        public bool Replaced { get; init; }
    }

    /// <summary>Null for a link that was never given out, has expired, was withdrawn or replaced.</summary>
    public Row? Of(string token) =>
        Find(token, LinkPurpose.Reminder, r => r.Secret) is { Discarded: false, Replaced: false } row && row.ExpiresAt > clock.Now ? row : null;

    /// <summary>The link to stop works for as long as the household is on file: nobody has to look for a newer mail.</summary>
    public Row? OfStop(string token) => Find(token, LinkPurpose.StopReminders, r => r.StopSecret);

    private Row? Find(string token, LinkPurpose purpose, Func<Row, string> secret) =>
        LinkTokens.Claimed(token) is { } id && Get(id) is { } row && keys.Fits(token, purpose, row.Id, secret(row)) ? row : null;

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    /// <summary>SQL: a newer reminder to the household took the place of <c>reminder n</c>.</summary>
    internal const string Replaced = "EXISTS (SELECT 1 FROM reminder o WHERE o.client_id = n.client_id AND o.id > n.id AND o.discarded = 0)";

    /// <summary>SQL: <c>reminder n</c> counts as having reminded the household; an answer noted from the phone does not.</summary>
    internal const string Reminded = "n.discarded = 0 AND n.sent_how IS NOT 'Phone'";

    /// <summary>SQL: <c>reminder n</c> left the shop, as far as anybody knows; one whose email was given up did not.</summary>
    internal const string Left = $"""
        {Reminded} AND n.sent_at IS NOT NULL
        AND (n.sent_how <> 'Mail'
             OR COALESCE((SELECT o.state FROM outbox o WHERE o.reminder_id = n.id ORDER BY o.id DESC LIMIT 1), n.mail_fate) IS NOT 'Failed')
        """;

    private const string GetSql = $"""
        SELECT n.id, n.secret, n.stop_secret, n.client_id, n.expires_at, n.discarded, c.reminders,
               {Replaced} AS replaced
        FROM reminder n
        JOIN client c ON c.id = n.client_id
        WHERE n.id = @id
        """;

    /// <summary>
    /// SQL: the ticket j of <c>reminder_racket a</c> while the answer is a yes. Once it is cancelled, by whomever, the
    /// question is open again; with another answer it is kept for the next yes.
    /// </summary>
    internal const string JobOfYes = "job j ON j.id = a.job_id AND a.answer IN ('Same', 'Different')";

    /// <summary>SQL: how many rackets reminder n asks about.</summary>
    internal const string RacketsAskedAbout = "(SELECT COUNT(*) FROM reminder_racket a WHERE a.reminder_id = n.id)";

    /// <summary>SQL: about how many of them there is an answer that holds.</summary>
    internal const string AnswersGiven = $"""
        (SELECT COUNT(a.answer) FROM reminder_racket a LEFT JOIN {JobOfYes}
         WHERE a.reminder_id = n.id AND j.state IS NOT 'Cancelled')
        """;

    /// <summary>SQL: the household has answered for every racket of <c>reminder n</c>.</summary>
    internal const string AnsweredInFull = $"{AnswersGiven} >= {RacketsAskedAbout}";

    public IReadOnlyList<ReminderRacket> Rackets(long reminder) => database.Read(c => Rackets(c, reminder, clock));

    /// <summary>Those that are no longer the household's are left out.</summary>
    internal static IReadOnlyList<ReminderRacket> Rackets(SqliteConnection connection, long reminder, ShopClock clock) =>
        Histories.Into(connection, connection.Query<ReminderRacket>(RacketsSql, new { reminder }).Select(r => r with { IsStrungSince = r.StrungHereOn >= clock.DayOf(r.MadeAt) }));

    private const string RacketsSql = $"""
        SELECT {ForecastRow.Columns}, r.number, r.frame, r.tape_colour, r.not_before, r.elsewhere_on AS elsewhere_now, p.name AS player, p.client_id,
               m.name AS mains, m.gauge_mm AS last_mains_gauge_mm, x.name AS crosses, x.gauge_mm AS last_crosses_gauge_mm,
               l.strung_on AS strung_here_on, n.made_at, s.mains_tension, s.crosses_tension, s.tension_unit,
               CASE WHEN c.payer_id IS NULL THEN s.price_minor END AS price_minor,
               CASE WHEN j.state = 'Cancelled' THEN NULL ELSE a.answer END AS answer, a.weeks, a.elsewhere_on AS answered_elsewhere_on, a.wish_strings, a.wish_tension, a.wish_note,
               a.state_before, a.elsewhere_before, a.job_id, j.state AS job_state, j.ticket,
               EXISTS (SELECT 1 FROM job o WHERE o.racket_id = r.id AND o.state IN ('Waiting', 'OnMachine', 'Strung')
                       AND o.id IS NOT j.id) AS has_other_job
        FROM reminder_racket a
        JOIN reminder n ON n.id = a.reminder_id
        JOIN racket r ON r.id = a.racket_id
        JOIN forecast f ON f.racket_id = r.id
        JOIN player p ON p.id = r.player_id AND p.client_id = n.client_id
        JOIN client c ON c.id = p.client_id
        LEFT JOIN job s ON s.id = {RequestedJob.Last}
        LEFT JOIN bed b ON b.racket_id = r.id
        LEFT JOIN job l ON l.id = b.job_id
        LEFT JOIN string_kind m ON m.id = l.mains_id
        LEFT JOIN string_kind x ON x.id = l.crosses_id
        LEFT JOIN {JobOfYes}
        WHERE a.reminder_id = @reminder AND r.state <> 'Sold'
        ORDER BY a.due, p.name_key, r.number
        """;
}
