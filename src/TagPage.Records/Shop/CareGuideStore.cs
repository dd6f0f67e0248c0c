using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Strings;
using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>The owner's advice on caring for strings and rackets.</summary>
public sealed class CareGuideStore(Database database, TimeProvider clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public string Title { get; init; } = "";
        public Material? ForMaterial { get; init; }
        public string Markdown { get; init; } = "";
        public int Version { get; init; }
    }

    public IReadOnlyList<Row> List() => database.Read(c => c.Query<Row>(ListSql).ToList());

    private const string ListSql = """
        SELECT id, name, title, for_material, '' AS markdown, version FROM care_guide ORDER BY title COLLATE NOCASE
        """;

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = "SELECT id, name, title, for_material, markdown, version FROM care_guide WHERE id = @id";

    public Outcome Add(Who who, CareGuideEntry input) => database.WriteOnceAsOwner(who, input.FormKey, clock.GetUtcNow(), c =>
        Taken(c, 0, input) ?? (Outcome)new Outcome.Done(c.ExecuteScalar<long>(AddSql, Values(0, input))));

    private const string AddSql = """
        INSERT INTO care_guide (name, title, for_material, markdown) VALUES (@Name, @Title, @ForMaterial, @Markdown) RETURNING id
        """;

    public Outcome Change(Who who, long id, CareGuideEntry input) => database.WriteAsOwner(who, c =>
    {
        if (!c.ExecuteScalar<bool>(IsThereSql, new { id }))
            return new Outcome.Absent();
        if (Taken(c, id, input) is { } taken)
            return taken;
        return c.Execute(ChangeSql, Values(id, input)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string IsThereSql = "SELECT EXISTS (SELECT 1 FROM care_guide WHERE id = @id)";

    private const string ChangeSql = """
        UPDATE care_guide
        SET name = @Name, title = @Title, for_material = @ForMaterial, markdown = @Markdown, version = version + 1
        WHERE id = @Id AND version = @Version
        """;

    public Outcome Remove(Who who, long id) => database.Write<Outcome>(c =>
        c.Execute(RemoveSql, new { id, who.IsOwner }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());

    private const string RemoveSql = "DELETE FROM care_guide WHERE id = @id AND @IsOwner";

    private static Outcome.Refused? Taken(SqliteConnection connection, long id, CareGuideEntry input) =>
        connection.ExecuteScalar<bool>(TakenSql, Values(id, input))
            ? new Outcome.Refused(new GuideNameTaken())
            : null;

    private const string TakenSql = "SELECT EXISTS (SELECT 1 FROM care_guide WHERE name = @Name AND id <> @Id)";

    private static object Values(long id, CareGuideEntry input) => new
    {
        Id = id,
        input.Version,
        input.Name,
        input.Title,
        ForMaterial = input.ForMaterial?.ToString(),
        input.Markdown,
    };
}
