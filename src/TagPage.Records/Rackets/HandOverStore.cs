using Dapper;
using TagPage.Records.Storage;
using TagPage.Records.Tags;

namespace TagPage.Records.Rackets;

/// <summary>
/// A racket goes to another player. The frame gets a new record there, with what it measures and carries; the old record is
/// sold, keeps its history, and its tag retires, so that neither side can read the other's. All of it happens, or nothing.
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
        var moved = c.ExecuteScalar<long>(MoveSql, new { racket, toPlayer, input.Number });
        foreach (var sql in new[] { SpecsSql, PlacesSql, PiecesSql })
            c.Execute(sql, new { racket, moved });
        return new Outcome.Done(moved);
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

    // Of the frame, not of whoever had it: the shop's notes may name them.
    private const string OfSpec = """
        measured_on, kind, weight, weight_unit, length, length_unit, balance, balance_unit, tip_weight,
        swing_weight, swing_source, pendulum_axis, pendulum_period_s, pendulum_off_s,
        weight_off_g, balance_off_mm, swing_weight_off, weight_balance_r, weight_swing_r, balance_swing_r, stiffness, stiffness_scale, strung, grip_on, dampener_on
        """;

    private const string SpecsSql = $"""
        INSERT INTO spec (racket_id, {OfSpec})
        SELECT @moved, {OfSpec}
        FROM spec
        WHERE racket_id = @racket
        ORDER BY id
        """;

    private const string OfPlace = "name, at, off_axis, length_unit, paired, most, weight_unit, on_strings";

    private const string PlacesSql = $"""
        INSERT INTO frame_place (racket_id, {OfPlace})
        SELECT @moved, {OfPlace}
        FROM frame_place
        WHERE racket_id = @racket
        ORDER BY id
        """;

    private const string OfPiece = """
        place, at, off_axis, length_unit, on_strings, weight, weight_unit, material, added_on, removed_on,
        by_plan, noted_after, off_by_plan, off_noted_after
        """;

    private const string PiecesSql = $"""
        INSERT INTO added_mass (racket_id, {OfPiece})
        SELECT @moved, {OfPiece}
        FROM added_mass
        WHERE racket_id = @racket
        ORDER BY id
        """;
}
