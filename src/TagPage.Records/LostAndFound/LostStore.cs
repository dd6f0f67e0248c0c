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
        public RacketState State { get; init; }
        public string PlayerName { get; init; } = "";
        public long ClientId { get; init; }
        public string ClientName { get; init; } = "";
        public DateOnly? LostSince { get; init; }
        public string LostNote { get; init; } = "";
    }

    /// <summary>Null for a racket that is not there, or not theirs to mark.</summary>
    public Row? Get(Who who, long racket) => database.Read(c => Get(c, who, racket));

    private static Row? Get(SqliteConnection connection, Who who, long racket) =>
        connection.QuerySingleOrDefault<Row>(GetSql, new { who.IsShop, who.ClientId, racket });

    private const string GetSql = $"""
        SELECT r.number, r.state, p.name AS player_name, c.id AS client_id, c.name AS client_name, r.lost_since, r.lost_note
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE r.id = @racket AND {Who.ChangesRacket}
        """;

    public Outcome Lose(Who who, long racket, LostEntry input)
    {
        var (today, note) = (clock.Today, input.Note ?? "");
        return database.Write<Outcome>(c =>
        {
            if (Get(c, who, racket) is not { } row)
                return new Outcome.Absent();
            if (row is { LostSince: null, State: RacketState.Sold or RacketState.Gone })
                return new Outcome.Refused(new LostAway(row.State));
            if (DayFault(row, input.Since, today) is { } why)
                return new Outcome.Refused(why);
            if (LostNote.Fault(note, c.Query<string>(NamesSql, new { row.ClientId })) is { } fault)
                return new Outcome.Refused(new LostNoteUnfit(fault));
            return c.Execute(LoseSql, new { who.IsShop, who.ClientId, racket, input.Since, note }) == 1 ? new Outcome.Done(racket) : new Outcome.Absent();
        });
    }

    /// <summary>A day already saved may stay, so that the note of a racket lost long ago can be changed.</summary>
    private static Refusal? DayFault(Row row, DateOnly since, DateOnly today) =>
        since > today ? new LostInFuture()
        : since < today.AddYears(-1) && since != row.LostSince ? new LostLongAgo()
        : null;

    private const string NamesSql = """
        SELECT name FROM client WHERE id = @ClientId
        UNION SELECT second_name FROM client WHERE id = @ClientId AND second_name <> ''
        UNION SELECT name FROM player WHERE client_id = @ClientId
        """;

    private const string LoseSql = $"""
        UPDATE racket AS r SET lost_since = @Since, lost_note = @note, version = version + 1
        WHERE r.id = @racket AND {Who.ChangesRacket}
        """;

    /// <summary>Idempotent: a racket that is not lost stays as it is.</summary>
    public Outcome Back(Who who, long racket) => database.Write<Outcome>(c =>
        c.Execute(BackSql, new { who.IsShop, who.ClientId, racket }) == 1 ? new Outcome.Done(racket) : new Outcome.Absent());

    private const string BackSql = $"""
        UPDATE racket AS r SET version = version + (lost_since IS NOT NULL), lost_since = NULL, lost_note = ''
        WHERE r.id = @racket AND {Who.ChangesRacket}
        """;
}
