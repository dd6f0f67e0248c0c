using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Import;

/// <summary>Finds what the shop has already of what a batch says about frames.</summary>
internal static class OnFileMeasured
{
    // Figures are compared as the database keeps them: a decimal of what it read has fewer digits.
    public static void Mark(SqliteConnection connection, ImportBatch batch)
    {
        MarkSpecs(connection, batch);
        MarkPlaces(connection, batch);
        MarkPieces(connection, batch);
    }

    private static void MarkSpecs(SqliteConnection connection, ImportBatch batch)
    {
        var known = connection.Query<(long RacketId, DateOnly MeasuredOn, double? Weight, string WeightUnit, double? Balance, string BalanceUnit, double? SwingWeight)>(SpecsSql, OnFileStore.Ids(batch.Rackets.Rows)).ToHashSet();
        foreach (var spec in batch.Specs.Where(s => s.Racket!.IsOnFile))
            spec.IsOnFile = known.Contains((spec.RacketId, spec.MeasuredOn, (double?)spec.Weight, spec.WeightUnitName, (double?)spec.Balance, spec.BalanceUnitName, (double?)spec.SwingWeight));
    }

    private const string SpecsSql = """
        SELECT racket_id, measured_on, weight, weight_unit, balance, balance_unit, swing_weight FROM spec WHERE racket_id IN (SELECT value FROM json_each(@ids))
        """;

    // A frame that has a list of its own keeps it.
    private static void MarkPlaces(SqliteConnection connection, ImportBatch batch)
    {
        var known = connection.Query<long>(PlacesSql, OnFileStore.Ids(batch.Rackets.Rows)).ToHashSet();
        foreach (var place in batch.Places.Where(p => p.Racket!.IsOnFile))
            place.IsOnFile = known.Contains(place.RacketId);
    }

    private const string PlacesSql = "SELECT DISTINCT racket_id FROM frame_place WHERE racket_id IN (SELECT value FROM json_each(@ids))";

    private static void MarkPieces(SqliteConnection connection, ImportBatch batch)
    {
        var known = connection.Query<(long RacketId, string Place, double At, string LengthUnit, double Weight, string WeightUnit, string Material, DateOnly AddedOn)>(PiecesSql, OnFileStore.Ids(batch.Rackets.Rows)).ToHashSet();
        foreach (var piece in batch.Pieces.Where(p => p.Racket!.IsOnFile))
            piece.IsOnFile = known.Contains((piece.RacketId, piece.Place, (double)piece.At, piece.LengthUnitName, (double)piece.Weight, piece.WeightUnitName, piece.MaterialName, piece.AddedOn));
    }

    private const string PiecesSql = """
        SELECT racket_id, place, at, length_unit, weight, weight_unit, material, added_on
        FROM added_mass
        WHERE racket_id IN (SELECT value FROM json_each(@ids))
        """;
}
