using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Strings;
using TagPage.Records.Storage;

namespace TagPage.Records.Strings;

/// <summary>The shop's own catalogue of strings.</summary>
public sealed class StringStore(Database database, TimeProvider clock)
{
    /// <summary>Jobs of a string that are counted; beyond these the list says "more".</summary>
    public const int MostJobs = 1000;

    public sealed record Row
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public Material Material { get; init; }
        public decimal GaugeMm { get; init; }
        public bool Offered { get; init; }
        public string Note { get; init; } = "";
        public int Version { get; init; }

        /// <summary>Counted up to <see cref="MostJobs"/> and one more.</summary>
        public int Jobs { get; init; }
    }

    public IReadOnlyList<Row> List() => database.Read(c => c.Query<Row>(ListSql).ToList());

    // Counted up to where one more says nothing new.
    private const string JobsSql = """
        (SELECT COUNT(*) FROM (SELECT 1 FROM job j WHERE j.mains_id = s.id
                               UNION ALL SELECT 1 FROM job j WHERE j.crosses_id = s.id AND j.mains_id <> s.id LIMIT 1001))
        """;

    private const string ListSql = $"""
        SELECT s.id, s.name, s.material, s.gauge_mm, s.offered, s.note, s.version,
               {JobsSql} AS jobs
        FROM string_kind s
        ORDER BY s.offered DESC, s.name COLLATE NOCASE, s.gauge_mm
        """;

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = $"""
        SELECT s.id, s.name, s.material, s.gauge_mm, s.offered, s.note, s.version,
               {JobsSql} AS jobs
        FROM string_kind s
        WHERE s.id = @id
        """;

    public Outcome Add(Who who, StringEntry input) => database.WriteOnceAsShop(who, input.FormKey, clock.GetUtcNow(), c =>
        Taken(c, 0, input) ?? (Outcome)new Outcome.Done(c.ExecuteScalar<long>(AddSql, Values(0, input))));

    private const string AddSql = """
        INSERT INTO string_kind (name, material, gauge_mm, offered, note)
        VALUES (@Name, @Material, @GaugeMm, @Offered, @Note)
        RETURNING id
        """;

    /// <summary>A string used in a job keeps its material and gauge, or the racket's history would change with it.</summary>
    public Outcome Change(Who who, long id, StringEntry input) => database.WriteAsShop(who, c =>
    {
        if (c.QuerySingleOrDefault<Row>(GetSql, new { id }) is not { } row)
            return new Outcome.Absent();
        if (row.Jobs > 0 && (row.Material != input.Material || row.GaugeMm != input.GaugeMm))
            return new Outcome.Refused(new StringInUse());
        if (Taken(c, id, input) is { } taken)
            return taken;
        return c.Execute(ChangeSql, Values(id, input)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE string_kind
        SET name = @Name, material = @Material, gauge_mm = @GaugeMm, offered = @Offered, note = @Note, version = version + 1
        WHERE id = @Id AND version = @Version
        """;

    private static Outcome.Refused? Taken(SqliteConnection connection, long id, StringEntry input) =>
        connection.ExecuteScalar<bool>(TakenSql, Values(id, input))
            ? new Outcome.Refused(new StringNameTaken())
            : null;

    private const string TakenSql = """
        SELECT EXISTS (SELECT 1 FROM string_kind WHERE name = @Name COLLATE NOCASE AND gauge_mm = @GaugeMm AND id <> @Id)
        """;

    private static object Values(long id, StringEntry input) => new
    {
        Id = id,
        input.Version,
        input.Name,
        Material = input.Material.ToString(),
        input.GaugeMm,
        input.Offered,
        Note = input.Note ?? "",
    };
}
