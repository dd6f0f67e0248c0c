using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Clients;
using TagPage.Records.Outbox;
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
        public int Version { get; init; }
    }

    public sealed record Player(long Id, string Name)
    {
        /// <summary>The client plays too, under the same name.</summary>
        public bool IsClient { get; init; }
    }

    public Row Get(long client) => database.Read(c => c.QuerySingle<Row>(GetSql, new { client }));

    private const string GetSql = """
        SELECT c.name, c.phone, c.mail, c.language, c.reminders, c.remind_by, c.quiet_months, c.second_name, c.second_phone, c.second_mail,
               y.name AS payer, c.forget_at, c.version
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
        ORDER BY p.name_key, p.id
        """;

    /// <summary>Takes a code. Whoever was reached until now is told that this changed.</summary>
    public Outcome ChangeContact(Who who, ContactEntry to)
    {
        var now = clock.Now;
        return database.Write<Outcome>(c =>
        {
            if (who.ClientId is not { } client || c.QuerySingleOrDefault<Row>(GetSql, new { client }) is not { } before)
                return new Outcome.Absent();
            if (!OwnPageCodeStore.IsFresh(c, who, now))
                return new Outcome.Refused(new CodeRanOut());
            if (to.Phone is null && to.Mail is null)
                return new Outcome.Refused(new ReachMissing());
            if (c.Execute(ContactSql, new { client, to.Version, to.Name, to.Phone, to.Mail, to.SecondName, to.SecondPhone, to.SecondMail }) == 0)
                return Outcome.Stale;
            if (before.Mail is { } old && (before.Mail, before.Phone) != (to.Mail, to.Phone))
            {
                var mail = mails.ContactChanged(Addressee.Of(c, client));
                outbox.Queue(c, new NewMail(MailKind.ClientNotice, client, mail.Subject, mail.Body) { ToAddress = old });
            }
            return new Outcome.Done(client);
        });
    }

    // What finders were shown of it ends with it: see the trigger client_contact_changed.
    private const string ContactSql = """
        UPDATE client
        SET name = @Name, phone = @Phone, mail = @Mail, second_name = @SecondName, second_phone = @SecondPhone, second_mail = @SecondMail,
            version = version + 1
        WHERE id = @client AND version = @Version
        """;

    public Outcome ChangeReminders(Who who, ReminderWishEntry to)
    {
        var today = clock.Today;
        return database.Write<Outcome>(c =>
        {
            if (who.ClientId is not { } client
                || c.Execute(RemindersSql, new { client, to.Language, Reminders = to.Wanted, By = to.By?.ToString(), to.QuietMonths, Today = today }) == 0)
                return new Outcome.Absent();
            return new Outcome.Done(client);
        });
    }

    private const string RemindersSql = $"""
        UPDATE client
        SET language = @Language, remind_by = COALESCE(@By, remind_by), quiet_months = @QuietMonths, {ClientStore.SetsReminders}, version = version + 1
        WHERE id = @client
        """;

    /// <summary>
    /// What the client says about who pays, for the owner to do; a form sent again says it once. Refused at the field
    /// where enough was said for a day.
    /// </summary>
    public Outcome AskAboutPayer(Who who, string words, string formKey)
    {
        var now = clock.Now;
        return database.Write(c => who.ClientId is { } client
            ? FormKeys.Once(c, who, formKey, now, () => AskAboutPayer(c, client, words, now))
            : new Outcome.Absent());
    }

    private static Outcome AskAboutPayer(SqliteConnection connection, long client, string words, DateTimeOffset now)
    {
        if (connection.ExecuteScalar<int>(AskedAboutPayerSql, new { client, DayAgo = now.AddDays(-1), DayOn = now.AddDays(1) }) >= MostAboutPayerADay)
            return new Outcome.Refused(new SaidEnough(MostAboutPayerADay));
        ClientRequestStore.Add(connection, client, RequestKind.Payer, words, now);
        return new Outcome.Done(client);
    }

    // What lies further ahead was written by a clock that ran wrong.
    private const string AskedAboutPayerSql = """
        SELECT COUNT(*) FROM client_request WHERE client_id = @client AND kind = 'Payer' AND made_at > @DayAgo AND made_at < @DayOn
        """;
}
