using Dapper;
using TagPage.Records.Clients;
using TagPage.Records.Outbox;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.OwnPages;

/// <summary>A client's own record, as far as the client may see and change it.</summary>
public sealed class OwnPageDetailsStore(Database database, OutboxStore outbox, IOwnPageMails mails, ShopClock clock)
{
    public const int MostAboutPayerADay = 3;

    public sealed record Row
    {
        public string Name { get; init; } = "";
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public string Language { get; init; } = "en";
        public bool Reminders { get; init; }
        public RemindBy RemindBy { get; init; }
        public int QuietMonths { get; init; }
        public string SecondName { get; init; } = "";
        public string? SecondPhone { get; init; }
        public string? SecondMail { get; init; }
        public string? Payer { get; init; }
        public DateTimeOffset? ForgetAt { get; init; }
    }

    public sealed record Player(long Id, string Name)
    {
        /// <summary>Whether the client plays, too, under the same name.</summary>
        public bool IsClient { get; init; }
    }

    public Row Get(long client) => database.Read(c => c.QuerySingle<Row>(GetSql, new { client }));

    private const string GetSql = """
        SELECT c.name, c.phone, c.mail, c.language, c.reminders, c.remind_by, c.quiet_months, c.second_name, c.second_phone, c.second_mail,
               y.name AS payer, c.forget_at
        FROM client c
        LEFT JOIN payer y ON y.id = c.payer_id
        WHERE c.id = @client
        """;

    public IReadOnlyList<Player> Players(long client) => database.Read(c => c.Query<(long Id, string Name, bool IsClient)>(PlayersSql, new { client })
        .Select(p => new Player(p.Id, p.Name) { IsClient = p.IsClient }).ToList());

    private const string PlayersSql = """
        SELECT p.id, p.name, p.name = c.name COLLATE NOCASE AS is_client
        FROM player p
        JOIN client c ON c.id = p.client_id
        WHERE c.id = @client
        ORDER BY p.name COLLATE NOCASE, p.id
        """;

    /// <summary>False if the code has expired. The previous address is told of the change.</summary>
    public bool ChangeContact(long client, string session, Row to)
    {
        var now = clock.Now;
        return database.Write(c =>
        {
            if (!OwnPageCodeStore.IsFresh(c, session, now))
                return false;
            var before = c.QuerySingle<Row>(GetSql, new { client });
            c.Execute(ContactSql, new { client, to.Name, to.Phone, to.Mail, to.SecondName, to.SecondPhone, to.SecondMail });
            if (before.Mail is { } old && (before.Mail, before.Phone) != (to.Mail, to.Phone))
            {
                var mail = mails.ContactChanged(Addressee.Of(c, client));
                outbox.Queue(c, new NewMail(MailKind.ClientNotice, client, mail.Subject, mail.Body) { ToAddress = old });
            }
            return true;
        });
    }

    // Finders are no longer shown it: see the trigger client_contact_changed.
    private const string ContactSql = """
        UPDATE client
        SET name = @Name, phone = @Phone, mail = @Mail, second_name = @SecondName, second_phone = @SecondPhone, second_mail = @SecondMail,
            version = version + 1
        WHERE id = @client
        """;

    public void ChangeReminders(long client, string language, bool wanted, RemindBy by, int quietMonths)
    {
        var today = clock.Today;
        database.Write(c =>
        {
            c.Execute(RemindersSql, new { client, language, wanted, By = by.ToString(), quietMonths, today });
            if (!wanted)
                c.Execute(AnswerStore.HoldBackSql, new { client });
        });
    }

    private const string RemindersSql = """
        UPDATE client
        SET language = @language, remind_by = @By, quiet_months = @quietMonths,
            reminders_changed_on = CASE WHEN reminders = @wanted THEN reminders_changed_on ELSE @today END, reminders = @wanted,
            version = version + 1
        WHERE id = @client
        """;

    /// <summary>
    /// What the client says about who pays, for the owner to act on; a form sent again says it once. Refused at the field
    /// where enough was said for a day.
    /// </summary>
    public Outcome AskAboutPayer(long client, string words, string formKey)
    {
        var now = clock.Now;
        return database.Write(c => FormKeys.Once(c, formKey, now, () =>
        {
            if (c.ExecuteScalar<int>(AskedAboutPayerSql, new { client, DayAgo = now.AddDays(-1), DayOn = now.AddDays(1) }) >= MostAboutPayerADay)
                return (Outcome)new Outcome.Refused(new SaidEnough(MostAboutPayerADay));
            ClientRequestStore.Add(c, client, RequestKind.Payer, words, now);
            return new Outcome.Done(client);
        }));
    }

    // Anything further ahead comes from a clock that was wrong.
    private const string AskedAboutPayerSql = """
        SELECT COUNT(*) FROM client_request WHERE client_id = @client AND kind = 'Payer' AND made_at > @DayAgo AND made_at < @DayOn
        """;
}
