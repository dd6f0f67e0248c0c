using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Loans;

/// <summary>Rackets of the shop's own that are lent. The owner keeps the list; the shop alone sees it.</summary>
public sealed class LoanRacketStore(Database database, ShopClock clock)
{
    /// <summary>What is out first, by the day it is due back; then what is at the shop; what is no longer lent last.</summary>
    public IReadOnlyList<LoanRacketRow> List(Who who) => database.Read(c => c.Query<LoanRacketRow>(ListSql, new { who.IsShop }).AsList());

    private const string ListSql = $"{Select} WHERE @IsShop ORDER BY r.is_ended, l.id IS NULL, l.due_on IS NULL, l.due_on, r.name COLLATE NOCASE";

    public LoanRacketRow? Get(Who who, long id) => database.Read(c => Get(c, who, id));

    internal static LoanRacketRow? Get(SqliteConnection connection, Who who, long id) =>
        connection.QuerySingleOrDefault<LoanRacketRow>($"{Select} WHERE r.id = @id AND @IsShop", new { who.IsShop, id });

    private const string Select = """
        SELECT r.id, r.name, r.note, r.is_ended, r.version, l.id AS loan_id, l.client_id, c.name AS client, l.lent_on, l.due_on
        FROM loan_racket r
        LEFT JOIN loan l ON l.loan_racket_id = r.id AND l.back_on IS NULL
        LEFT JOIN client c ON c.id = l.client_id
        """;

    public Outcome Add(Who who, LoanRacketEntry input) => database.WriteOnceAsOwner(who, input.FormKey, clock.Now, c =>
        Taken(c, 0, input) ?? (Outcome)new Outcome.Done(c.ExecuteScalar<long>(AddSql, new { input.Name, Note = input.Note ?? "" })));

    private const string AddSql = "INSERT INTO loan_racket (name, note) VALUES (@Name, @Note) RETURNING id";

    /// <summary>One that a client has stays on the list.</summary>
    public Outcome Change(Who who, long id, LoanRacketEntry input) => database.WriteAsOwner(who, c =>
    {
        if (Get(c, who, id) is not { } racket)
            return new Outcome.Absent();
        if (Taken(c, id, input) is { } taken)
            return taken;
        if (input.IsEnded && racket.Client is { } client)
            return new Outcome.Refused(new LentNow(client));
        return c.Execute(ChangeSql, new { id, input.Version, input.Name, Note = input.Note ?? "", input.IsEnded }) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE loan_racket SET name = @Name, note = @Note, is_ended = @IsEnded, version = version + 1 WHERE id = @id AND version = @Version
        """;

    private static Outcome.Refused? Taken(SqliteConnection connection, long id, LoanRacketEntry input) =>
        connection.ExecuteScalar<bool>(TakenSql, new { id, input.Name }) ? new Outcome.Refused(new LoanNameTaken()) : null;

    private const string TakenSql = "SELECT EXISTS (SELECT 1 FROM loan_racket WHERE name = @Name COLLATE NOCASE AND id <> @id)";
}
