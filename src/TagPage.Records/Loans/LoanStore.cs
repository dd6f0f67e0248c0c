using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Loans;

/// <summary>Who has which of the shop's own rackets. Only the shop may; a racket is with one client at a time.</summary>
public sealed class LoanStore(Database database, ShopClock clock)
{
    /// <summary>Lines of a list.</summary>
    public const int Most = 200;

    public LoanRow? Get(Who who, long id) => database.Read(c => Get(c, who, id));

    private static LoanRow? Get(SqliteConnection connection, Who who, long id) => connection.QuerySingleOrDefault<LoanRow>($"{Select} WHERE l.id = @id AND @IsShop", new { who.IsShop, id });

    private const string Select = """
        SELECT l.id, l.loan_racket_id, r.name AS racket, l.client_id, c.name AS client, c.phone AS client_phone, l.lent_on, l.due_on, l.back_on, l.note
        FROM loan l
        JOIN loan_racket r ON r.id = l.loan_racket_id
        JOIN client c ON c.id = l.client_id
        """;

    /// <summary>What a client has, and then what they had, the newest first.</summary>
    public IReadOnlyList<LoanRow> OfClient(Who who, long client) => database.Read(c => c.Query<LoanRow>(OfClientSql, new { who.IsShop, client, Most }).AsList());

    private const string OfClientSql = $"{Select} WHERE l.client_id = @client AND @IsShop ORDER BY l.back_on IS NOT NULL, l.lent_on DESC, l.id DESC LIMIT @Most";

    /// <summary>What should have come back, the longest overdue first.</summary>
    public IReadOnlyList<LoanRow> Overdue(Who who)
    {
        var today = clock.Today;
        return database.Read(c => c.Query<LoanRow>(OverdueSql, new { who.IsShop, today, Most }).AsList());
    }

    internal const string OverdueSql = $"{Select} WHERE l.back_on IS NULL AND l.due_on < @today AND @IsShop ORDER BY l.due_on, l.id LIMIT @Most";

    /// <summary>Of two who lend the same racket at once, one does and the other is told.</summary>
    public Outcome Lend(Who who, long client, LoanEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteOnceAsShop(who, input.FormKey, now, c =>
        {
            if (!c.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM client WHERE id = @client)", new { client }))
                return new Outcome.Absent();
            if (input.Fault(today) is { } why)
                return new Outcome.Refused(why);
            return LoanRacketStore.Get(c, who, input.RacketId) switch
            {
                null or { IsEnded: true } => new Outcome.Refused(new LoanRacketUnknown()),
                { Client: { } other } racket => new Outcome.Refused(new LentAlready(racket.Name, other)),
                _ => c.ExecuteScalar<long?>(LendSql, new { client, input.RacketId, input.LentOn, input.DueOn, Note = input.Note ?? "", who.Name }) is { } loan
                    ? new Outcome.Done(loan)
                    : HadIt(c, input.RacketId, 0, input.LentOn),
            };
        });
    }

    private const string LendSql = $"""
        INSERT INTO loan (loan_racket_id, client_id, lent_on, due_on, note, made_by)
        SELECT @RacketId, @client, @LentOn, @DueOn, @Note, @Name
        WHERE NOT EXISTS (SELECT 1 FROM loan o WHERE o.loan_racket_id = @RacketId AND {IsAfter})
        RETURNING id
        """;

    /// <summary>SQL: that loan <c>o</c> lasted beyond @LentOn. On the day on which it is back, a racket can be lent again.</summary>
    private const string IsAfter = "(o.back_on IS NULL OR o.back_on > @LentOn)";

    private static Outcome.Refused HadIt(SqliteConnection connection, long racket, long loan, DateOnly lentOn)
    {
        var (name, client, back) = connection.QuerySingle<(string, string, DateOnly)>(HadItSql, new { racket, loan, LentOn = lentOn });
        return new Outcome.Refused(new LentThen(name, client, back));
    }

    private const string HadItSql = $"""
        SELECT r.name, c.name, o.back_on
        FROM loan o
        JOIN loan_racket r ON r.id = o.loan_racket_id
        JOIN client c ON c.id = o.client_id
        WHERE o.loan_racket_id = @racket AND o.id <> @loan AND {IsAfter}
        ORDER BY o.back_on DESC
        LIMIT 1
        """;

    public Outcome TakeBack(Who who, long id, DateOnly on)
    {
        var today = clock.Today;
        return database.WriteAsShop(who, c =>
        {
            if (Get(c, who, id) is not { } loan)
                return new Outcome.Absent();
            if (loan.BackOn is { } back)
                return new Outcome.Refused(new GivenBackAlready(back));
            if (on > today)
                return new Outcome.Refused(new BackInFuture());
            if (on < loan.LentOn)
                return new Outcome.Refused(new BackBeforeLent(loan.LentOn));
            c.Execute("UPDATE loan SET back_on = @on WHERE id = @id", new { id, on });
            return new Outcome.Done(id);
        });
    }

    /// <summary>It was not given back after all; unless somebody else had it since.</summary>
    public Outcome Reopen(Who who, long id) => database.WriteAsShop(who, c =>
    {
        if (Get(c, who, id) is not { } loan)
            return new Outcome.Absent();
        if (LoanRacketStore.Get(c, who, loan.LoanRacketId) is { Client: { } other } racket && racket.LoanId != id)
            return new Outcome.Refused(new LentAlready(racket.Name, other));
        return c.Execute(ReopenSql, new { id, loan.LoanRacketId, loan.LentOn }) == 1 ? new Outcome.Done(id) : HadIt(c, loan.LoanRacketId, id, loan.LentOn);
    });

    private const string ReopenSql = $"""
        UPDATE loan SET back_on = NULL
        WHERE id = @id AND NOT EXISTS (SELECT 1 FROM loan o WHERE o.loan_racket_id = @LoanRacketId AND o.id <> @id AND {IsAfter})
        """;

    /// <summary>In the caller's transaction.</summary>
    internal static bool HasOpen(SqliteConnection connection, long client) =>
        connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM loan WHERE client_id = @client AND back_on IS NULL)", new { client });
}
