using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Clients;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>What a client agreed to for the case that a racket is found, and since when.</summary>
public sealed class FoundChoiceStore(Database database, OutboxStore outbox, IOwnPageMails mails, ShopClock clock)
{
    public sealed record Row
    {
        public string Name { get; init; } = "";
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public FoundChoice Choice { get; init; }
        public bool Always { get; init; }
        public bool ShowsMail { get; init; }
        public DateOnly? On { get; init; }
        public int Version { get; init; }
    }

    public Row? Get(Who who, long id) => database.Read(c => Get(c, who, id));

    private static Row? Get(SqliteConnection connection, Who who, long id) =>
        connection.QuerySingleOrDefault<Row>(GetSql, new { who.IsShop, who.ClientId, id });

    private const string GetSql = $"""
        SELECT name, phone, mail, found_choice AS choice, found_always AS always, found_shows_mail AS shows_mail, found_choice_on AS "on", version
        FROM client
        WHERE id = @id AND {Who.ChangesClient}
        """;

    /// <summary>A client needs a code for it, since it can put a telephone number into the open, and the address on file is told.</summary>
    public Outcome Change(Who who, long id, FoundChoiceEntry input)
    {
        var (today, now) = (clock.Today, clock.Now);
        return database.Write<Outcome>(c =>
        {
            if (Get(c, who, id) is not { } row)
                return new Outcome.Absent();
            if (!OwnPageCodeStore.IsFresh(c, who, now))
                return new Outcome.Refused(new CodeRanOut());
            var mail = input.ShowsMail && row.Mail is not null;
            if (input.Choice == FoundChoice.Contact && row.Phone is null && !mail)
                return new Outcome.Refused(new NothingToShow());
            var isContact = input.Choice == FoundChoice.Contact;
            var values = new { id, input.Version, Choice = input.Choice.ToString(), Always = isContact && input.Always, ShowsMail = isContact && mail, today };
            if (c.Execute(ChangeSql, values) == 0)
                return Outcome.Stale;
            if (!who.IsShop && row.Mail is not null)
                Tell(c, id, input.Choice);
            return new Outcome.Done(id);
        });
    }

    private void Tell(SqliteConnection connection, long client, FoundChoice choice)
    {
        var mail = mails.FoundChoiceChanged(Addressee.Of(connection, client), choice);
        outbox.Queue(connection, new NewMail(MailKind.ClientNotice, client, mail.Subject, mail.Body));
    }

    private const string ChangeSql = """
        UPDATE client
        SET found_choice = @Choice, found_always = @Always, found_shows_mail = @ShowsMail, found_choice_on = @today, version = version + 1
        WHERE id = @id AND version = @Version
        """;

    /// <summary>Back to the shop's contact alone, whatever anybody else is just saving. Withdrawn already is as good.</summary>
    public Outcome Withdraw(Who who, long id)
    {
        var today = clock.Today;
        return database.Write<Outcome>(c => c.Execute(WithdrawSql, new { who.IsShop, who.ClientId, id, today }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());
    }

    private const string WithdrawSql = $"""
        UPDATE client
        SET found_choice_on = CASE found_choice WHEN 'Shop' THEN found_choice_on ELSE @today END,
            version = version + (found_choice <> 'Shop'), found_choice = 'Shop', found_always = 0, found_shows_mail = 0
        WHERE id = @id AND {Who.ChangesClient}
        """;
}
