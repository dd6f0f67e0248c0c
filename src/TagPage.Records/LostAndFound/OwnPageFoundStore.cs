using Dapper;
using TagPage.Records.Clients;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>What a finder of this client's rackets gets, and what finders have done so far.</summary>
public sealed class OwnPageFoundStore(Database database, OutboxStore outbox, IOwnPageMails mails, ShopClock clock)
{
    public sealed record Row
    {
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public FoundChoice Choice { get; init; }
        public bool Always { get; init; }
        public bool ShowsMail { get; init; }
        public DateOnly? On { get; init; }
    }

    public Row Get(long client) => database.Read(c => c.QuerySingle<Row>(GetSql, new { client }));

    private const string GetSql = """
        SELECT phone, mail, found_choice AS choice, found_always AS always, found_shows_mail AS shows_mail, found_choice_on AS "on"
        FROM client
        WHERE id = @client
        """;

    public enum Answer { Done, NotFresh, NothingToShow }

    /// <summary>Agreeing to more takes a code that was just typed; the address on file is told.</summary>
    public Answer Change(long client, string session, FoundChoice choice, bool always, bool showsMail)
    {
        var (today, now) = (clock.Today, clock.Now);
        return database.Write(c =>
        {
            if (!OwnPageCodeStore.IsFresh(c, session, now))
                return Answer.NotFresh;
            var row = c.QuerySingle<Row>(GetSql, new { client });
            var isContact = choice == FoundChoice.Contact;
            var mail = isContact && showsMail && row.Mail is not null;
            if (isContact && row.Phone is null && !mail)
                return Answer.NothingToShow;
            c.Execute(ChangeSql, new { client, Choice = choice.ToString(), Always = isContact && always, mail, today });
            if (row.Mail is not null)
            {
                var text = mails.FoundChoiceChanged(Addressee.Of(c, client), choice);
                outbox.Queue(c, new NewMail(MailKind.ClientNotice, client, text.Subject, text.Body));
            }
            return Answer.Done;
        });
    }

    private const string ChangeSql = """
        UPDATE client
        SET found_choice = @Choice, found_always = @Always, found_shows_mail = @mail, found_choice_on = @today, version = version + 1
        WHERE id = @client
        """;

    public sealed record Deed
    {
        public long Id { get; init; }
        public FoundKind Kind { get; init; }
        public DateTimeOffset At { get; init; }
        public string Message { get; init; } = "";
        public string Contact { get; init; } = "";
        public DateTimeOffset? AnsweredAt { get; init; }
        public int Number { get; init; }
        public string Player { get; init; } = "";
    }

    /// <summary>The newest first. Those of rackets that are no longer the client's are left out.</summary>
    public IReadOnlyList<Deed> Events(long client) => database.Read(c => c.Query<Deed>(EventsSql, new { client }).ToList());

    private const string EventsSql = """
        SELECT e.id, e.kind, e.at, e.message, e.contact, e.answered_at, r.number, p.name AS player
        FROM found_event e
        JOIN racket r ON r.id = e.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE e.client_id = @client AND p.client_id = @client
        ORDER BY e.at DESC, e.id DESC
        LIMIT 100
        """;
}
