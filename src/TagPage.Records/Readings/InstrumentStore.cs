using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Strings;
using TagPage.Records.Storage;

namespace TagPage.Records.Readings;

/// <summary>What readings are taken on. Only the shop changes it.</summary>
public sealed class InstrumentStore(Database database, TimeProvider clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public ReadingScale Scale { get; init; }
        public int Version { get; init; }
        public int Readings { get; init; }

        /// <summary>Households' phones, which hear pitch and nothing else.</summary>
        public bool IsPhones { get; init; }
    }

    public IReadOnlyList<Row> List() => database.Read(c => c.Query<Row>(ListSql).ToList());

    private const string ListSql = """
        SELECT i.id, i.name, i.scale, i.version, i.kind = 'Phones' AS is_phones, (SELECT COUNT(*) FROM reading g WHERE g.instrument_id = i.id) AS readings
        FROM instrument i
        ORDER BY i.name COLLATE NOCASE
        """;

    public Row? Get(long id) => database.Read(c => Get(c, id));

    private static Row? Get(SqliteConnection connection, long id) => connection.QuerySingleOrDefault<Row>(GetSql, new { id });

    private const string GetSql = """
        SELECT i.id, i.name, i.scale, i.version, i.kind = 'Phones' AS is_phones, (SELECT COUNT(*) FROM reading g WHERE g.instrument_id = i.id) AS readings
        FROM instrument i
        WHERE i.id = @id
        """;

    public Outcome Add(Who who, InstrumentEntry input) => database.WriteOnceAsOwner(who, input.FormKey, clock.GetUtcNow(), c =>
        Taken(c, 0, input) ?? (Outcome)new Outcome.Done(c.ExecuteScalar<long>(AddSql, Values(0, input))));

    private const string AddSql = "INSERT INTO instrument (name, scale) VALUES (@Name, @Scale) RETURNING id";

    /// <summary>Once an instrument has readings its scale is fixed, or they would change their meaning.</summary>
    public Outcome Change(Who who, long id, InstrumentEntry input) => database.Write<Outcome>(c =>
    {
        if (!who.IsOwner || Get(c, id) is not { } row)
            return new Outcome.Absent();
        if ((row.Readings > 0 || row.IsPhones) && row.Scale != input.Scale)
            return new Outcome.Refused(new InstrumentInUse());
        if (Taken(c, id, input) is { } taken)
            return taken;
        return c.Execute(ChangeSql, Values(id, input)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE instrument SET name = @Name, scale = @Scale, version = version + 1 WHERE id = @Id AND version = @Version
        """;

    private static Outcome.Refused? Taken(SqliteConnection connection, long id, InstrumentEntry input) =>
        connection.ExecuteScalar<bool>(TakenSql, Values(id, input))
            ? new Outcome.Refused(new InstrumentNameTaken())
            : null;

    private const string TakenSql = "SELECT EXISTS (SELECT 1 FROM instrument WHERE name = @Name COLLATE NOCASE AND id <> @Id)";

    private static object Values(long id, InstrumentEntry input) => new { Id = id, input.Version, input.Name, Scale = input.Scale.ToString() };
}
