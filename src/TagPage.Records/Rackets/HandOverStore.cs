using Dapper;
using TagPage.Records.Storage;
using TagPage.Records.Tags;

namespace TagPage.Records.Rackets;

/// <summary>
/// A racket goes to another player. The frame gets a new record there; the old record is sold, keeps its history, and
/// its tag retires, so that neither side can read the other's. All of it happens, or nothing.
/// </summary>
public sealed class HandOverStore(Database database, TimeProvider clock)
{
    /// <summary>Done carries the id of the new record.</summary>
    public Outcome HandOver(Who who, long racket, long toPlayer, HandOverEntry input) => database.WriteOnceAsShop(who, input.FormKey, clock.GetUtcNow(), c =>
    {
        if (RacketStore.Get(c, racket) is not { } row || c.QuerySingleOrDefault<long?>(PlayerSql, new { toPlayer }) is null)
            return new Outcome.Absent();
        if (row.IsHandedOver)
            return new Outcome.Refused(new HandedOverAlready());
        if (row.PlayerId == toPlayer)
            return new Outcome.Refused(new SamePlayer(row.PlayerName));
        if (c.QuerySingleOrDefault<long?>(OpenTicketSql, new { racket }) is { } ticket)
            return new Outcome.Refused(new StillOnBench(ticket));
        if (RacketStore.Taken(c, toPlayer, 0, input.Number) is { } taken)
            return taken;
        if (c.Execute(SellSql, new { racket, input.Version }) == 0)
            return Outcome.Stale;
        TagStore.RetireOf(c, racket, clock.GetUtcNow());
        return new Outcome.Done(c.ExecuteScalar<long>(MoveSql, new { racket, toPlayer, input.Number }));
    });

    private const string PlayerSql = "SELECT id FROM player WHERE id = @toPlayer";

    private const string OpenTicketSql = """
        SELECT MIN(ticket) FROM job WHERE racket_id = @racket AND state IN ('Waiting', 'OnMachine', 'Strung')
        """;

    private const string SellSql = """
        UPDATE racket SET state = 'Sold', version = version + 1
        WHERE id = @racket AND version = @Version
        """;

    // What is not named here stays behind: the owner's own date, the notes, the mark that it is lost.
    private const string MoveSql = """
        INSERT INTO racket (player_id, number, state, sport, frame, tape_colour, head_size, head_size_unit,
                            pattern_mains, pattern_crosses, length_cm, grip, came_from_id)
        SELECT @toPlayer, @Number, 'InTurn', sport, frame, tape_colour, head_size, head_size_unit,
               pattern_mains, pattern_crosses, length_cm, grip, id
        FROM racket
        WHERE id = @racket
        RETURNING id
        """;
}
