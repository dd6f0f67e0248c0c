using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Customising;

/// <summary>What is on frames, piece by piece, and what was taken off again: by a plan, or noted by hand.</summary>
public sealed class AddedMassStore(Database database, TimeProvider clock)
{
    public sealed record Row : PieceEntry
    {
        public long Id { get; init; }
        public DateOnly? RemovedOn { get; init; }
    }

    private const string Columns = "a.id, a.place, a.at, a.off_axis, a.length_unit, a.on_strings, a.weight, a.weight_unit, a.material, a.added_on, a.removed_on";

    /// <summary>All that was ever added to a racket, what is still on it first.</summary>
    public IReadOnlyList<Row> Of(long racket) => database.Read(c => c.Query<Row>(OfSql, new { racket }).AsList());

    private const string OfSql = $"""
        SELECT {Columns}
        FROM added_mass a
        WHERE a.racket_id = @racket
        ORDER BY a.removed_on IS NOT NULL, a.added_on DESC, a.at_cm, a.id
        """;

    internal static IReadOnlyList<Row> Present(SqliteConnection connection, long racket) => connection.Query<Row>(PresentSql, new { racket }).AsList();

    private const string PresentSql = $"""
        SELECT {Columns}
        FROM added_mass a
        WHERE a.racket_id = @racket AND a.removed_on IS NULL
        ORDER BY a.id
        """;

    internal static long? Add(SqliteConnection connection, long racket, PieceEntry mass, bool byPlan) => connection.ExecuteScalar<long?>(AddSql, new
    {
        racket,
        mass.Place,
        mass.At,
        mass.OffAxis,
        LengthUnit = mass.LengthUnit.ToString(),
        mass.OnStrings,
        mass.Weight,
        WeightUnit = mass.WeightUnit.ToString(),
        Material = mass.Material.ToString(),
        mass.AddedOn,
        byPlan,
    });

    private const string AddSql = """
        INSERT INTO added_mass (racket_id, place, at, off_axis, length_unit, on_strings, weight, weight_unit, material, added_on, by_plan, noted_after)
        SELECT r.id, @Place, @At, @OffAxis, @LengthUnit, @OnStrings, @Weight, @WeightUnit, @Material, @AddedOn, @byPlan, (SELECT COUNT(*) FROM spec WHERE racket_id = r.id)
        FROM racket r
        WHERE r.id = @racket
        RETURNING id
        """;

    internal static bool Remove(SqliteConnection connection, long racket, long id, DateOnly on, bool byPlan) =>
        connection.Execute(RemoveSql, new { racket, id, on, byPlan }) == 1;

    private const string RemoveSql = """
        UPDATE added_mass
        SET removed_on = @on, off_by_plan = @byPlan, off_noted_after = (SELECT COUNT(*) FROM spec WHERE racket_id = @racket)
        WHERE id = @id AND racket_id = @racket AND removed_on IS NULL AND added_on <= @on
        """;

    /// <summary>Notes what is on a frame already. No spec changes: it was measured with it, or has to be measured again.</summary>
    public Outcome Note(Who who, long racket, PieceEntry piece) => database.WriteOnceAsShop(who, piece.FormKey, clock.GetUtcNow(), c =>
        Add(c, racket, piece, byPlan: false) is { } id ? new Outcome.Done(id) : new Outcome.Absent());

    public Outcome TakeOff(Who who, long racket, long id, DateOnly on) => database.WriteAsShop(who, c =>
        Remove(c, racket, id, on, byPlan: false) ? new Outcome.Done(id)
        : c.ExecuteScalar<bool>(LaterSql, new { racket, id, on }) ? new Outcome.Refused(new AddedLater())
        : new Outcome.Absent());

    private const string LaterSql = "SELECT EXISTS (SELECT 1 FROM added_mass WHERE id = @id AND racket_id = @racket AND removed_on IS NULL AND added_on > @on)";

    /// <summary>For a piece that was noted by mistake and never was on the frame.</summary>
    public Outcome Forget(Who who, long racket, long id) => database.WriteAsShop(who, c =>
        c.Execute(ForgetSql, new { racket, id }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());

    private const string ForgetSql = "DELETE FROM added_mass WHERE id = @id AND racket_id = @racket";
}
