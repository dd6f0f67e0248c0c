using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Import;

/// <summary>Finds what the shop has already of what a batch says about frames.</summary>
internal static class OnFileMeasured
{
    // Figures are compared as the database keeps them: a decimal of what it read has fewer digits.
    public static void Mark(SqliteConnection connection, ImportBatch batch)
    {
        var rackets = OnFileStore.Ids(batch.Rackets.Rows);
        MarkSpecs(connection, batch, rackets);
        MarkPlaces(connection, batch, rackets);
        MarkPieces(connection, batch, rackets);
    }

    private static void MarkSpecs(SqliteConnection connection, ImportBatch batch, object rackets)
    {
        var known = connection.Query<(long RacketId, DateOnly MeasuredOn, double? Weight, string WeightUnit, double? Balance, string BalanceUnit, double? SwingWeight)>(SpecsSql, rackets).ToHashSet();
        foreach (var row in batch.Specs.Where(s => s.Racket!.IsOnFile))
        {
            var spec = row.Spec;
            row.IsOnFile = known.Contains((row.RacketId, spec.MeasuredOn, (double?)spec.Weight, spec.WeightUnit.ToString(), (double?)spec.Balance, spec.BalanceUnit.ToString(), (double?)spec.SwingWeight));
        }
    }

    private const string SpecsSql = """
        SELECT racket_id, measured_on, weight, weight_unit, balance, balance_unit, swing_weight FROM spec WHERE racket_id IN (SELECT value FROM json_each(@ids))
        """;

    // A frame that has a list of its own keeps it.
    private static void MarkPlaces(SqliteConnection connection, ImportBatch batch, object rackets)
    {
        var known = connection.Query<long>(PlacesSql, rackets).ToHashSet();
        foreach (var place in batch.Places.Where(p => p.Racket!.IsOnFile))
            place.IsOnFile = known.Contains(place.RacketId);
    }

    private const string PlacesSql = "SELECT DISTINCT racket_id FROM frame_place WHERE racket_id IN (SELECT value FROM json_each(@ids))";

    private static void MarkPieces(SqliteConnection connection, ImportBatch batch, object rackets)
    {
        var known = connection.Query<(long RacketId, string Place, double At, string LengthUnit, double Weight, string WeightUnit, string Material, DateOnly AddedOn)>(PiecesSql, rackets).ToHashSet();
        foreach (var row in batch.Pieces.Where(p => p.Racket!.IsOnFile))
        {
            var piece = row.Piece;
            row.IsOnFile = known.Contains((row.RacketId, piece.Place, (double)piece.At, piece.LengthUnit.ToString(), (double)piece.Weight, piece.WeightUnit.ToString(), piece.Material.ToString(), piece.AddedOn));
        }
    }

    private const string PiecesSql = """
        SELECT racket_id, place, at, length_unit, weight, weight_unit, material, added_on
        FROM added_mass
        WHERE racket_id IN (SELECT value FROM json_each(@ids))
        """;
}
