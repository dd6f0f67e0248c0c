using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Specs;

/// <summary>What a racket measured, each time with its date and in what state.</summary>
public sealed class SpecStore(Database database, TimeProvider clock)
{
    public sealed record Row : SpecEntry
    {
        public long Id { get; init; }
    }

    private const string Entered = """
        measured_on, kind, weight, weight_unit, length, length_unit, balance, balance_unit, tip_weight, swing_weight, swing_source,
        pendulum_axis, pendulum_period_s, pendulum_off_s, weight_off_g, balance_off_mm, swing_weight_off, weight_balance_r, weight_swing_r, balance_swing_r, stiffness, stiffness_scale, strung, grip_on, dampener_on, note
        """;

    private const string EnteredValues = """
        @MeasuredOn, @Kind, @Weight, @WeightUnit, @Length, @LengthUnit, @Balance, @BalanceUnit, @TipWeight, @SwingWeight, @SwingSource,
        @PendulumAxis, @PendulumPeriodS, @PendulumOffS, @WeightOffG, @BalanceOffMm, @SwingWeightOff, @WeightBalanceR, @WeightSwingR, @BalanceSwingR, @Stiffness, @StiffnessScale, @Strung, @GripOn, @DampenerOn, @Note
        """;

    private const string Columns = $"id, {Entered}, version";

    /// <summary>All specs of a racket, newest first.</summary>
    public IReadOnlyList<Row> Of(long racket) => database.Read(c => Of(c, racket));

    internal static IReadOnlyList<Row> Of(SqliteConnection connection, long racket) => connection.Query<Row>(OfSql, new { racket }).AsList();

    private const string OfSql = $"""
        SELECT {Columns}
        FROM spec
        WHERE racket_id = @racket
        ORDER BY measured_on DESC, id DESC
        """;

    public Row? Get(long racket, long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { racket, id }));

    private const string GetSql = $"""
        SELECT {Columns}
        FROM spec
        WHERE id = @id AND racket_id = @racket
        """;

    public Outcome Add(Who who, long racket, SpecEntry input) => database.WriteOnceAsShop(who, input.FormKey, clock.GetUtcNow(), c =>
        Insert(c, racket, input) is { } id ? new Outcome.Done(id) : new Outcome.Absent());

    /// <summary>For a write that makes more than the spec; null without the racket.</summary>
    internal static long? Insert(SqliteConnection connection, long racket, SpecEntry input) => connection.ExecuteScalar<long?>(AddSql, Values(racket, 0, input));

    private const string AddSql = $"""
        INSERT INTO spec (racket_id, {Entered})
        SELECT r.id, {EnteredValues}
        FROM racket r
        WHERE r.id = @Racket
        RETURNING id
        """;

    /// <summary>Of rackets that are there.</summary>
    internal static void InsertAll(SqliteConnection connection, IEnumerable<(long Racket, SpecEntry Spec)> specs) =>
        connection.Execute(InsertAllSql, specs.Select(of => Values(of.Racket, 0, of.Spec)));

    private const string InsertAllSql = $"INSERT INTO spec (racket_id, {Entered}) VALUES (@Racket, {EnteredValues})";

    public Outcome Change(Who who, long racket, long id, SpecEntry input) => database.WriteAsShop(who, c =>
    {
        if (c.QuerySingleOrDefault<Row>(GetSql, new { racket, id }) is null)
            return new Outcome.Absent();
        return c.Execute(ChangeSql, Values(racket, id, input)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE spec
        SET measured_on = @MeasuredOn, kind = @Kind, weight = @Weight, weight_unit = @WeightUnit, length = @Length, length_unit = @LengthUnit,
            balance = @Balance, balance_unit = @BalanceUnit, tip_weight = @TipWeight, swing_weight = @SwingWeight, swing_source = @SwingSource,
            pendulum_axis = @PendulumAxis, pendulum_period_s = @PendulumPeriodS, pendulum_off_s = @PendulumOffS,
            weight_off_g = @WeightOffG, balance_off_mm = @BalanceOffMm, swing_weight_off = @SwingWeightOff,
            weight_balance_r = @WeightBalanceR, weight_swing_r = @WeightSwingR, balance_swing_r = @BalanceSwingR,
            stiffness = @Stiffness, stiffness_scale = @StiffnessScale, strung = @Strung, grip_on = @GripOn,
            dampener_on = @DampenerOn, note = @Note, version = version + 1
        WHERE id = @Id AND racket_id = @Racket AND version = @Version
        """;

    /// <summary>Whether strangers see on the racket's tag page what it measures.</summary>
    public Outcome ShowOnTag(Who who, long racket, bool show) => database.WriteAsShop(who, c =>
        c.Execute(ShowOnTagSql, new { racket, show }) == 1 ? new Outcome.Done(racket) : new Outcome.Absent());

    private const string ShowOnTagSql = "UPDATE racket SET version = version + (specs_on_tag <> @show), specs_on_tag = @show WHERE id = @racket";

    /// <summary>Names of stiffness scales used before, to suggest while typing.</summary>
    public IReadOnlyList<string> Scales() => database.Read(c => c.Query<string>(ScalesSql).ToList());

    private const string ScalesSql = """
        SELECT DISTINCT stiffness_scale
        FROM (SELECT stiffness_scale FROM spec ORDER BY id DESC LIMIT 200)
        WHERE stiffness_scale <> ''
        """;

    private static object Values(long racket, long id, SpecEntry input) => new
    {
        Racket = racket,
        Id = id,
        input.Version,
        input.MeasuredOn,
        Kind = input.Kind.ToString(),
        input.Weight,
        WeightUnit = input.WeightUnit.ToString(),
        input.Length,
        LengthUnit = input.LengthUnit.ToString(),
        input.Balance,
        BalanceUnit = input.BalanceUnit.ToString(),
        input.TipWeight,
        input.SwingWeight,
        SwingSource = input.SwingSource.ToString(),
        input.PendulumAxis,
        input.PendulumPeriodS,
        input.PendulumOffS,
        input.WeightOffG,
        input.BalanceOffMm,
        input.SwingWeightOff,
        input.WeightBalanceR,
        input.WeightSwingR,
        input.BalanceSwingR,
        input.Stiffness,
        StiffnessScale = input.StiffnessScale ?? "",
        input.Strung,
        input.GripOn,
        input.DampenerOn,
        Note = input.Note ?? "",
    };
}
