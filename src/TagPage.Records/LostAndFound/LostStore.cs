using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>Marks a racket as lost, with a short note for everybody, and as back again.</summary>
public sealed class LostStore(Database database, ShopClock clock)
{
    public sealed record Row
    {
        public int Number { get; init; }
        public string PlayerName { get; init; } = "";
        public long ClientId { get; init; }
        public string ClientName { get; init; } = "";
        public DateOnly? LostSince { get; init; }
        public string LostNote { get; init; } = "";
    }

    public Row? Get(long racket) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { racket }));

    private const string GetSql = """
        SELECT r.number, p.name AS player_name, c.id AS client_id, c.name AS client_name, r.lost_since, r.lost_note
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE r.id = @racket
        """;

    public Outcome Lose(long racket, LostEntry input)
    {
        var today = clock.Today;
        return database.Write<Outcome>(c =>
        {
            if (c.QuerySingleOrDefault<Row>(GetSql, new { racket }) is not { } row)
                return new Outcome.Absent();
            if (input.Since > today)
                return new Outcome.Refused(new LostInFuture());
            if (Fault(c, row.ClientId, input.Note ?? "") is { } fault)
                return new Outcome.Refused(new LostNoteUnfit(fault));
            Mark(c, racket, input.Since, input.Note ?? "");
            return new Outcome.Done(racket);
        });
    }

    /// <summary>What is wrong with a note for everybody, whoever wrote it: among others a name of the household's.</summary>
    internal static LostNoteFault? Fault(SqliteConnection connection, long client, string note) =>
        LostNote.Fault(note, connection.Query<string>(NamesSql, new { client }));

    private const string NamesSql = """
        SELECT name FROM client WHERE id = @client
        UNION SELECT second_name FROM client WHERE id = @client AND second_name <> ''
        UNION SELECT name FROM player WHERE client_id = @client
        """;

    internal static void Mark(SqliteConnection connection, long racket, DateOnly? since, string note) => connection.Execute(MarkSql, new { racket, since, note });

    private const string MarkSql = "UPDATE racket SET lost_since = @since, lost_note = @note, version = version + 1 WHERE id = @racket";

    /// <summary>Back already is as good.</summary>
    public Outcome Back(long racket) => database.Write<Outcome>(c =>
        c.Execute(BackSql, new { racket }) == 1 ? new Outcome.Done(racket) : new Outcome.Absent());

    private const string BackSql = """
        UPDATE racket SET version = version + (lost_since IS NOT NULL), lost_since = NULL, lost_note = '' WHERE id = @racket
        """;
}
