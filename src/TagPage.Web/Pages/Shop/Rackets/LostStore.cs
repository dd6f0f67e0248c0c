using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Rackets;
using TagPage.Web.Data;

namespace TagPage.Web.Pages.Shop.Rackets;

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

    public Outcome Lose(long racket, LostInput input)
    {
        var today = clock.Today;
        return database.Write<Outcome>(c =>
        {
            if (c.QuerySingleOrDefault<Row>(GetSql, new { racket }) is not { } row)
                return new Outcome.Absent();
            if (input.Since > today)
                return new Outcome.Refused(nameof(input.Since), "This day is still to come. Write the day it was last seen.");
            if (Fault(c, row.ClientId, input.Note ?? "") is { } fault)
                return new Outcome.Refused(nameof(input.Note), Advice(fault));
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

    private static string Advice(LostNoteFault fault) => fault switch
    {
        LostNoteFault.TooLong => "Keep the note within 140 characters.",
        LostNoteFault.NotPlain => "Write the note in plain characters on one line.",
        LostNoteFault.MailSign => "Everybody can read the note: take the @ out.",
        LostNoteFault.Link => "Everybody can read the note: take the link out. After a full stop leave a space.",
        LostNoteFault.Digits => "Everybody can read the note: take the number out. It has six digits or more, like a phone number.",
        _ => "Everybody can read the note: take the name of the client or player out.",
    };

    internal static void Mark(SqliteConnection connection, long racket, DateOnly? since, string note) => connection.Execute(MarkSql, new { racket, since, note });

    private const string MarkSql = "UPDATE racket SET lost_since = @since, lost_note = @note, version = version + 1 WHERE id = @racket";

    /// <summary>Back already is as good.</summary>
    public Outcome Back(long racket) => database.Write<Outcome>(c =>
        c.Execute(BackSql, new { racket }) == 1 ? new Outcome.Done(racket) : new Outcome.Absent());

    private const string BackSql = """
        UPDATE racket SET version = version + (lost_since IS NOT NULL), lost_since = NULL, lost_note = '' WHERE id = @racket
        """;
}
