using Dapper;
using TagPage.Records.Clients;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>What a client has agreed to if a racket is found, and since when.</summary>
public sealed class FoundChoiceStore(Database database, ShopClock clock)
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

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = """
        SELECT name, phone, mail, found_choice AS choice, found_always AS always, found_shows_mail AS shows_mail, found_choice_on AS "on", version
        FROM client
        WHERE id = @id
        """;

    public Outcome Change(long id, FoundChoiceEntry input)
    {
        var today = clock.Today;
        return database.Write<Outcome>(c =>
        {
            if (c.QuerySingleOrDefault<Row>(GetSql, new { id }) is not { } row)
                return new Outcome.Absent();
            var mail = input.ShowsMail && row.Mail is not null;
            if (input.Choice == FoundChoice.Contact && row.Phone is null && !mail)
                return new Outcome.Refused(new NothingToShow());
            var isContact = input.Choice == FoundChoice.Contact;
            var values = new { id, input.Version, Choice = input.Choice.ToString(), Always = isContact && input.Always, ShowsMail = isContact && mail, today };
            return c.Execute(ChangeSql, values) == 1 ? new Outcome.Done(id) : Outcome.Stale;
        });
    }

    private const string ChangeSql = """
        UPDATE client
        SET found_choice = @Choice, found_always = @Always, found_shows_mail = @ShowsMail, found_choice_on = @today, version = version + 1
        WHERE id = @id AND version = @Version
        """;

    /// <summary>Back to the shop's contact details alone, whatever anybody else is saving at the same time. Idempotent.</summary>
    public Outcome Withdraw(long id)
    {
        var today = clock.Today;
        return database.Write<Outcome>(c => c.Execute(WithdrawSql, new { id, today }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());
    }

    private const string WithdrawSql = """
        UPDATE client
        SET found_choice_on = CASE found_choice WHEN 'Shop' THEN found_choice_on ELSE @today END,
            version = version + (found_choice <> 'Shop'), found_choice = 'Shop', found_always = 0, found_shows_mail = 0
        WHERE id = @id
        """;
}
