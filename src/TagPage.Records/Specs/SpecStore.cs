using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Specs;

/// <summary>What a racket measured, each time with its date and in what state.</summary>
public sealed class SpecStore(Database database, TimeProvider clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public DateOnly MeasuredOn { get; init; }
        public decimal? WeightG { get; init; }
        public decimal? BalanceMm { get; init; }
        public decimal? SwingWeight { get; init; }
        public decimal? Stiffness { get; init; }
        public string StiffnessScale { get; init; } = "";
        public decimal? LengthMm { get; init; }
        public bool Strung { get; init; }
        public bool GripOn { get; init; }
        public bool DampenerOn { get; init; }
        public string Note { get; init; } = "";
        public int Version { get; init; }
    }

    /// <summary>All specs of a racket, newest first.</summary>
    public IReadOnlyList<Row> Of(long racket) => database.Read(c => c.Query<Row>(OfSql, new { racket }).ToList());

    private const string OfSql = """
        SELECT id, measured_on, weight_g, balance_mm, swing_weight, stiffness, stiffness_scale, length_mm,
               strung, grip_on, dampener_on, note, version
        FROM spec
        WHERE racket_id = @racket
        ORDER BY measured_on DESC, id DESC
        """;

    public Row? Get(long racket, long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { racket, id }));

    private const string GetSql = """
        SELECT id, measured_on, weight_g, balance_mm, swing_weight, stiffness, stiffness_scale, length_mm,
               strung, grip_on, dampener_on, note, version
        FROM spec
        WHERE id = @id AND racket_id = @racket
        """;

    public Outcome Add(Who who, long racket, SpecEntry input) => database.WriteOnceAsShop(who, input.FormKey, clock.GetUtcNow(), c =>
        c.ExecuteScalar<long?>(AddSql, Values(racket, 0, input)) is { } id ? new Outcome.Done(id) : new Outcome.Absent());

    private const string AddSql = """
        INSERT INTO spec (racket_id, measured_on, weight_g, balance_mm, swing_weight, stiffness, stiffness_scale,
                          length_mm, strung, grip_on, dampener_on, note)
        SELECT r.id, @MeasuredOn, @WeightG, @BalanceMm, @SwingWeight, @Stiffness, @StiffnessScale,
               @LengthMm, @Strung, @GripOn, @DampenerOn, @Note
        FROM racket r
        WHERE r.id = @Racket
        RETURNING id
        """;

    public Outcome Change(Who who, long racket, long id, SpecEntry input) => database.WriteAsShop(who, c =>
    {
        if (c.QuerySingleOrDefault<Row>(GetSql, new { racket, id }) is null)
            return new Outcome.Absent();
        return c.Execute(ChangeSql, Values(racket, id, input)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE spec
        SET measured_on = @MeasuredOn, weight_g = @WeightG, balance_mm = @BalanceMm, swing_weight = @SwingWeight,
            stiffness = @Stiffness, stiffness_scale = @StiffnessScale, length_mm = @LengthMm, strung = @Strung,
            grip_on = @GripOn, dampener_on = @DampenerOn, note = @Note, version = version + 1
        WHERE id = @Id AND racket_id = @Racket AND version = @Version
        """;

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
        input.WeightG,
        input.BalanceMm,
        input.SwingWeight,
        input.Stiffness,
        StiffnessScale = input.StiffnessScale ?? "",
        input.LengthMm,
        input.Strung,
        input.GripOn,
        input.DampenerOn,
        Note = input.Note ?? "",
    };
}
