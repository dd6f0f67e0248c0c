using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Customising;
using TagPage.Records.Specs;

namespace TagPage.Records.Import;

/// <summary>Writes what a batch brings about frames: what they measure, where they carry mass, and what is on them.</summary>
internal static class MeasuredRowStore
{
    public static void Add(SqliteConnection connection, ImportBatch batch)
    {
        SpecStore.InsertAll(connection, batch.Specs.Where(row => !row.IsThere).Select(row => (row.RacketId, row.Spec)));
        FramePlaceStore.InsertAll(connection, batch.Places.Where(row => !row.IsThere).Select(row => (row.RacketId, row.Place)));
        connection.Execute(PieceSql, batch.Pieces.Where(row => !row.IsThere).Select(Values));
    }

    private const string PieceSql = """
        INSERT INTO added_mass (racket_id, place, at, off_axis, length_unit, on_strings, weight, weight_unit, material, added_on, removed_on,
                                by_plan, noted_after, off_by_plan, off_noted_after)
        VALUES (@RacketId, @Place, @At, @OffAxis, @LengthUnit, @OnStrings, @Weight, @WeightUnit, @Material, @AddedOn, @RemovedOn,
                @ByPlan, @NotedAfter, @OffByPlan, @OffNotedAfter)
        """;

    private static object Values(PieceRow row) => new
    {
        row.RacketId,
        row.Piece.Place,
        row.Piece.At,
        row.Piece.OffAxis,
        LengthUnit = row.Piece.LengthUnit.ToString(),
        row.Piece.OnStrings,
        row.Piece.Weight,
        WeightUnit = row.Piece.WeightUnit.ToString(),
        Material = row.Piece.Material.ToString(),
        row.Piece.AddedOn,
        row.RemovedOn,
        row.ByPlan,
        row.NotedAfter,
        row.OffByPlan,
        row.OffNotedAfter,
    };
}
