using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Customising;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;

namespace TagPage.Records.Customising;

/// <summary>Where each frame can carry mass: its own list, or the one its sport starts with.</summary>
public sealed class FramePlaceStore(Database database)
{
    private sealed record Row
    {
        public string Name { get; init; } = "";
        public double AtCm { get; init; }
        public double OffAxisCm { get; init; }
        public bool Paired { get; init; }
        public double MostG { get; init; }
        public bool OnStrings { get; init; }
    }

    /// <summary>From the butt upwards.</summary>
    public IReadOnlyList<FramePlace> Of(RacketStore.Row racket) => database.Read(c => Of(c, racket));

    internal static IReadOnlyList<FramePlace> Of(SqliteConnection connection, RacketStore.Row racket)
    {
        var own = connection.Query<Row>(OfSql, new { racket = racket.Id }).ToList();
        return own.Count == 0
            ? StartingPlaces.Of(racket.Sport, (double?)racket.LengthCm)
            : [.. own.Select(p => new FramePlace(p.Name, p.AtCm) { OffAxisCm = p.OffAxisCm, Paired = p.Paired, MostG = p.MostG, OnStrings = p.OnStrings })];
    }

    private const string OfSql = """
        SELECT name, at_cm, off_axis_cm, paired, most_g, on_strings
        FROM frame_place
        WHERE racket_id = @racket
        ORDER BY at_cm, id
        """;

    /// <summary>Replaces the racket's list; an empty one, or the one its sport starts with, stands for the latter.</summary>
    public Outcome Save(Who who, long racket, IReadOnlyList<FramePlace> places) => database.WriteAsShop(who, c =>
    {
        if (RacketStore.Get(c, racket) is not { } row)
            return new Outcome.Absent();
        c.Execute(ClearSql, new { racket });
        if (!places.SequenceEqual(StartingPlaces.Of(row.Sport, (double?)row.LengthCm)))
            c.Execute(AddSql, places.Select(p => new { racket, p.Name, p.AtCm, p.OffAxisCm, p.Paired, p.MostG, p.OnStrings }));
        return new Outcome.Done(racket);
    });

    private const string ClearSql = "DELETE FROM frame_place WHERE racket_id = @racket";

    private const string AddSql = """
        INSERT INTO frame_place (racket_id, name, at_cm, off_axis_cm, paired, most_g, on_strings)
        VALUES (@racket, @Name, @AtCm, @OffAxisCm, @Paired, @MostG, @OnStrings)
        """;
}
