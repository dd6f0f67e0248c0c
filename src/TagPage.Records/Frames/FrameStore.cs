using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Sports;
using TagPage.Records.Storage;

namespace TagPage.Records.Frames;

/// <summary>The shop's own catalogue of frames. A racket's frame is found by its sport and name, whatever the case.</summary>
public sealed class FrameStore(Database database, TimeProvider clock)
{
    public sealed record Row : FrameEntry
    {
        public long Id { get; init; }
    }

    private const string Columns = "id, sport, name, pattern_mains, pattern_crosses, skipped_holes, tie_offs, least_tension, most_tension, tension_unit, note, version";

    public IReadOnlyList<Row> List() => database.Read(c => c.Query<Row>(ListSql).AsList());

    private const string ListSql = $"""
        SELECT {Columns}
        FROM frame
        ORDER BY name COLLATE NOCASE, sport, id
        """;

    public FrameCatalogue Catalogue() => new(List());

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = $"SELECT {Columns} FROM frame WHERE id = @id";

    /// <summary>What is known about a racket's frame; null where the catalogue has none of its name.</summary>
    public Row? Find(Sport sport, string frame) => database.Read(c => Find(c, sport, frame));

    internal static Row? Find(SqliteConnection connection, Sport sport, string frame) =>
        connection.QuerySingleOrDefault<Row>(FindSql, new { Sport = sport.ToString(), Key = FrameCatalogue.KeyOf(frame) });

    private const string FindSql = $"""
        SELECT {Columns}
        FROM frame
        WHERE sport = @Sport AND name_key = @Key
        """;

    public Outcome Add(Who who, FrameEntry input) => database.WriteOnceAsOwner(who, input.FormKey, clock.GetUtcNow(), c =>
        Taken(c, 0, input) ?? (Outcome)new Outcome.Done(c.ExecuteScalar<long>(AddSql, Values(0, input))));

    private const string AddSql = """
        INSERT INTO frame (sport, name, name_key, pattern_mains, pattern_crosses, skipped_holes, tie_offs, least_tension, most_tension, tension_unit, note)
        VALUES (@Sport, @Name, @Key, @PatternMains, @PatternCrosses, @SkippedHoles, @TieOffs, @LeastTension, @MostTension, @TensionUnit, @Note)
        RETURNING id
        """;

    public Outcome Change(Who who, long id, FrameEntry input) => database.WriteAsOwner(who, c =>
    {
        if (c.QuerySingleOrDefault<Row>(GetSql, new { id }) is null)
            return new Outcome.Absent();
        if (Taken(c, id, input) is { } taken)
            return taken;
        return c.Execute(ChangeSql, Values(id, input)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE frame
        SET sport = @Sport, name = @Name, name_key = @Key, pattern_mains = @PatternMains, pattern_crosses = @PatternCrosses, skipped_holes = @SkippedHoles,
            tie_offs = @TieOffs, least_tension = @LeastTension, most_tension = @MostTension, tension_unit = @TensionUnit, note = @Note, version = version + 1
        WHERE id = @Id AND version = @Version
        """;

    private static Outcome.Refused? Taken(SqliteConnection connection, long id, FrameEntry input) =>
        Find(connection, input.Sport, input.Name) is { } other && other.Id != id ? new Outcome.Refused(new FrameNameTaken()) : null;

    private static object Values(long id, FrameEntry input) => new
    {
        Id = id,
        input.Version,
        Sport = input.Sport.ToString(),
        input.Name,
        Key = FrameCatalogue.KeyOf(input.Name),
        input.PatternMains,
        input.PatternCrosses,
        SkippedHoles = input.SkippedHoles ?? "",
        TieOffs = input.TieOffs ?? "",
        input.LeastTension,
        input.MostTension,
        TensionUnit = input.TensionUnit.ToString(),
        Note = input.Note ?? "",
    };
}
