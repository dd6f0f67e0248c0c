using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Customising;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;

namespace TagPage.Records.Customising;

/// <summary>Where each frame can carry mass: its own list, or the one its sport starts with.</summary>
public sealed class FramePlaceStore(Database database)
{
    /// <summary>From the butt upwards.</summary>
    internal static IReadOnlyList<FramePlace> Of(SqliteConnection connection, RacketStore.Row racket)
    {
        var own = connection.Query<FramePlaceEntry>(OfSql, new { racket = racket.Id }).ToList();
        return own.Count == 0
            ? StartingPlaces.Of(racket.Sport, (double?)racket.LengthCm)
            : [.. own.Select(place => place.Place)];
    }

    private const string OfSql = """
        SELECT name, at, off_axis, length_unit, paired, most, weight_unit, on_strings
        FROM frame_place
        WHERE racket_id = @racket
        ORDER BY at_cm, id
        """;

    /// <summary>Replaces the racket's list; an empty one, or the one its sport starts with, stands for the latter.</summary>
    public Outcome Save(Who who, long racket, IReadOnlyList<FramePlaceEntry> places) => database.WriteAsShop(who, c =>
    {
        if (RacketStore.Get(c, racket) is not { } row)
            return new Outcome.Absent();
        c.Execute(ClearSql, new { racket });
        if (!Same(places, StartingPlaces.Of(row.Sport, (double?)row.LengthCm)))
            InsertAll(c, places.Select(place => (racket, place)));
        return new Outcome.Done(racket);
    });

    // A form shows inches and ounces with few decimals: what differs less than that was not changed.
    private static bool Same(IReadOnlyList<FramePlaceEntry> places, IReadOnlyList<FramePlace> others) =>
        places.Count == others.Count && places.Zip(others).All(pair => Coarse(pair.First.Place) == Coarse(pair.Second));

    private static FramePlace Coarse(FramePlace place) =>
        place with { AtCm = Math.Round(place.AtCm, 1), OffAxisCm = Math.Round(place.OffAxisCm, 1), MostG = Math.Round(place.MostG, 1) };

    private const string ClearSql = "DELETE FROM frame_place WHERE racket_id = @racket";

    internal static void InsertAll(SqliteConnection connection, IEnumerable<(long Racket, FramePlaceEntry Place)> places) => connection.Execute(AddSql, places.Select(of => new
    {
        of.Racket,
        of.Place.Name,
        of.Place.At,
        of.Place.OffAxis,
        LengthUnit = of.Place.LengthUnit.ToString(),
        of.Place.Paired,
        of.Place.Most,
        WeightUnit = of.Place.WeightUnit.ToString(),
        of.Place.OnStrings,
    }));

    private const string AddSql = """
        INSERT INTO frame_place (racket_id, name, at, off_axis, length_unit, paired, most, weight_unit, on_strings)
        VALUES (@Racket, @Name, @At, @OffAxis, @LengthUnit, @Paired, @Most, @WeightUnit, @OnStrings)
        """;
}
