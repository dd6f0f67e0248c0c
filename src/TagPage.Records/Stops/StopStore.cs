using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Stops;

/// <summary>The places besides its bench where a shop's rackets are left and collected. The owner sets them up.</summary>
public sealed class StopStore(Database database, ShopClock clock)
{
    /// <summary>In the order of the round, those that are no longer used last.</summary>
    public IReadOnlyList<StopRow> List() => database.Read(c => c.Query<StopRow>($"{Select} ORDER BY is_ended, position, id").AsList());

    /// <summary>Those in use; a shop that has none reads nowhere of stops.</summary>
    public IReadOnlyList<StopRow> InUse() => database.Read(InUse);

    internal static IReadOnlyList<StopRow> InUse(SqliteConnection connection) => connection.Query<StopRow>($"{Select} WHERE is_ended = 0 ORDER BY position, id").AsList();

    public StopRow? Get(long id) => database.Read(c => Get(c, id));

    private static StopRow? Get(SqliteConnection connection, long id) => connection.QuerySingleOrDefault<StopRow>($"{Select} WHERE id = @id", new { id });

    private const string Select = "SELECT id, name, kind, is_ended, version FROM stop";

    public Outcome Add(Who who, StopEntry input) => database.WriteOnceAsOwner(who, input.FormKey, clock.Now, c =>
        Taken(c, 0, input) ?? (Outcome)new Outcome.Done(c.ExecuteScalar<long>(AddSql, new { input.Name, Kind = input.Kind.ToString() })));

    private const string AddSql = """
        INSERT INTO stop (name, kind, position) VALUES (@Name, @Kind, (SELECT COALESCE(MAX(position), 0) + 1 FROM stop)) RETURNING id
        """;

    /// <summary>One with rackets at it, or on their way there, cannot end.</summary>
    public Outcome Change(Who who, long id, StopEntry input) => database.WriteAsOwner(who, c =>
    {
        if (Get(c, id) is null)
            return new Outcome.Absent();
        if (Taken(c, id, input) is { } taken)
            return taken;
        if (input.IsEnded && c.ExecuteScalar<int>(RacketsSql, new { id }) is > 0 and var rackets)
            return new Outcome.Refused(new StopHasRackets(rackets));
        return c.Execute(ChangeSql, new { id, input.Version, input.Name, Kind = input.Kind.ToString(), input.IsEnded }) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE stop SET name = @Name, kind = @Kind, is_ended = @IsEnded, version = version + 1 WHERE id = @id AND version = @Version
        """;

    private const string RacketsSql = """
        SELECT COUNT(*)
        FROM job_stop s
        JOIN job j ON j.id = s.job_id
        WHERE ((s.left_at = @id AND s.fetched_at IS NULL AND j.state = 'Waiting') OR s.collect_at = @id) AND j.state IN ('Waiting', 'OnMachine', 'Strung')
        """;

    private static Outcome.Refused? Taken(SqliteConnection connection, long id, StopEntry input) =>
        connection.ExecuteScalar<bool>(TakenSql, new { id, input.Name }) ? new Outcome.Refused(new StopNameTaken()) : null;

    private const string TakenSql = "SELECT EXISTS (SELECT 1 FROM stop WHERE name = @Name COLLATE NOCASE AND id <> @id)";

    /// <summary>One place earlier on the round; the first stays where it is.</summary>
    public Outcome Earlier(Who who, long id) => database.WriteAsOwner(who, c =>
    {
        if (Get(c, id) is null)
            return new Outcome.Absent();
        c.Execute(EarlierSql, new { id });
        return new Outcome.Done(id);
    });

    // Both take the other's position; those that are no longer used are passed over.
    private const string EarlierSql = """
        WITH one AS (SELECT id, position FROM stop WHERE id = @id),
             other AS (SELECT s.id, s.position FROM stop s JOIN one ON s.position < one.position WHERE s.is_ended = 0 ORDER BY s.position DESC LIMIT 1)
        UPDATE stop
        SET position = CASE id WHEN @id THEN (SELECT position FROM other) ELSE (SELECT position FROM one) END, version = version + 1
        WHERE EXISTS (SELECT 1 FROM other) AND id IN (@id, (SELECT id FROM other))
        """;
}
