using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Customising;
using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Records.Customising;

/// <summary>What the string bed of an unstrung frame would weigh: that of the strings it had last.</summary>
internal static class StringBeds
{
    private sealed record Row
    {
        public Sport Sport { get; init; }
        public Material? MainsMaterial { get; init; }
        public decimal? MainsGaugeMm { get; init; }
        public Material? CrossesMaterial { get; init; }
        public decimal? CrossesGaugeMm { get; init; }
    }

    /// <summary>Grams, estimated; the sport's usual string where none is known.</summary>
    public static double Grams(SqliteConnection connection, long racket)
    {
        var row = connection.QuerySingle<Row>(BedSql, new { racket });
        return StringBed.Grams(new Bed(
            new BedString(row.MainsMaterial ?? Material.SyntheticGut, row.MainsGaugeMm),
            new BedString(row.CrossesMaterial ?? row.MainsMaterial ?? Material.SyntheticGut, row.CrossesGaugeMm ?? row.MainsGaugeMm)), row.Sport);
    }

    private const string BedSql = """
        SELECT sport, mains_material, mains_gauge_mm, crosses_material, crosses_gauge_mm
        FROM forecast
        WHERE racket_id = @racket
        """;
}
