using Microsoft.Data.Sqlite;

namespace TagPage.Records.Import;

/// <summary>Writes what a batch brings about frames: what they measure, where they carry mass, and what is on them.</summary>
internal static class MeasuredRowStore
{
    public static void Add(SqliteConnection connection, ImportBatch batch)
    {
        ImportRowStore.Insert(connection, "spec", SpecSql, batch.Specs);
        ImportRowStore.Insert(connection, "frame_place", PlaceSql, batch.Places);
        ImportRowStore.Insert(connection, "added_mass", PieceSql, batch.Pieces);
    }

    private const string SpecSql = """
        INSERT INTO spec (id, racket_id, measured_on, kind, weight, weight_unit, length, length_unit, balance, balance_unit, tip_weight,
                          swing_weight, swing_source, pendulum_axis, pendulum_period_s, pendulum_off_s,
                          weight_off_g, balance_off_mm, swing_weight_off, weight_balance_r, weight_swing_r, balance_swing_r, stiffness, stiffness_scale, strung, grip_on, dampener_on, note)
        VALUES (@Id, @RacketId, @MeasuredOn, @KindName, @Weight, @WeightUnitName, @Length, @LengthUnitName, @Balance, @BalanceUnitName, @TipWeight,
                @SwingWeight, @SwingSourceName, @PendulumAxis, @PendulumPeriodS, @PendulumOffS,
                @WeightOffG, @BalanceOffMm, @SwingWeightOff, @WeightBalanceR, @WeightSwingR, @BalanceSwingR, @Stiffness, @StiffnessScale, @Strung, @GripOn, @DampenerOn, @Note)
        """;

    private const string PlaceSql = """
        INSERT INTO frame_place (id, racket_id, name, at, off_axis, length_unit, paired, most, weight_unit, on_strings)
        VALUES (@Id, @RacketId, @Name, @At, @OffAxis, @LengthUnitName, @Paired, @Most, @WeightUnitName, @OnStrings)
        """;

    private const string PieceSql = """
        INSERT INTO added_mass (id, racket_id, place, at, off_axis, length_unit, on_strings, weight, weight_unit, material, added_on, removed_on,
                                by_plan, noted_after, off_by_plan, off_noted_after)
        VALUES (@Id, @RacketId, @Place, @At, @OffAxis, @LengthUnitName, @OnStrings, @Weight, @WeightUnitName, @MaterialName, @AddedOn, @RemovedOn,
                @ByPlan, @NotedAfter, @OffByPlan, @OffNotedAfter)
        """;
}
