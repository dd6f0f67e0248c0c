using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Customising;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Storage;

namespace TagPage.Records.Customising;

/// <summary>Frames with all that customising needs to know of them.</summary>
public sealed class FrameOnFileStore(Database database, ShopStore shops)
{
    public FrameOnFile? Get(long racket) => database.Read(c => Get(c, racket));

    /// <summary>A player's frames that are not sold or gone, by number.</summary>
    public IReadOnlyList<FrameOnFile> OfPlayer(long player) =>
        database.Read(c => c.Query<long>(OfPlayerSql, new { player }).ToList().Select(id => Get(c, id)!).ToList());

    private const string OfPlayerSql = "SELECT id FROM racket WHERE player_id = @player AND state NOT IN ('Sold', 'Gone') ORDER BY number";

    private FrameOnFile? Get(SqliteConnection connection, long id)
    {
        if (RacketStore.Get(connection, id) is not { } racket)
            return null;
        var values = shops.Get().CustomisingValues;
        var specs = SpecStore.Of(connection, id);
        var whole = specs.Where(s => s is { WeightG: not null, BalanceMm: not null, SwingWeight: not null }).ToList();
        var spec = whole.FirstOrDefault();
        return new FrameOnFile
        {
            Racket = racket,
            Junior = connection.ExecuteScalar<bool>(JuniorSql, new { id }),
            Specs = specs,
            Spec = spec,
            Figures = spec is null ? new SpecFigures() : SpecFigures.Of(spec, values),
            Places = FramePlaceStore.Of(connection, racket),
            Present = AddedMassStore.Present(connection, id),
            HasChanged = (whole.Find(s => s.SwingSource != SwingSource.WorkedOut) ?? spec) is { } measured && HasChanged(connection, id, measured, specs),
            StringBedG = StringBeds.Grams(connection, id),
        };
    }

    // What was worked out counts the pieces of its plan, and none that were noted by hand.
    private static bool HasChanged(SqliteConnection connection, long id, SpecStore.Row measured, IReadOnlyList<SpecStore.Row> specs) =>
        connection.ExecuteScalar<bool>(ChangedSql, new { id, measured.MeasuredOn, UpToThis = specs.Count(spec => spec.Id <= measured.Id) });

    private const string ChangedSql = """
        SELECT EXISTS (
          SELECT 1
          FROM added_mass
          WHERE racket_id = @id
            AND ((by_plan = 0 AND (added_on > @MeasuredOn OR (added_on = @MeasuredOn AND noted_after >= @UpToThis)))
              OR (off_by_plan = 0 AND (removed_on > @MeasuredOn OR (removed_on = @MeasuredOn AND off_noted_after >= @UpToThis)))))
        """;

    private const string JuniorSql = "SELECT p.junior FROM racket r JOIN player p ON p.id = r.player_id WHERE r.id = @id";
}
