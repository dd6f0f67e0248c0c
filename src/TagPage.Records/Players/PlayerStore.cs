using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Text;
using TagPage.Records.Storage;

namespace TagPage.Records.Players;

/// <summary>The people who play with the rackets; each belongs to one client.</summary>
public sealed class PlayerStore(Database database, TimeProvider clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public long ClientId { get; init; }
        public string ClientName { get; init; } = "";
        public string Name { get; init; } = "";
        public bool Junior { get; init; }
        public decimal TimesAWeek { get; init; }
        public decimal HoursATime { get; init; }
        public Hitting Hitting { get; init; }
        public RestringRule? Rule { get; init; }
        public int? EveryWeeks { get; init; }
        public string Note { get; init; } = "";
        public int Version { get; init; }
    }

    /// <summary>The client to add a player to, or null for none.</summary>
    public string? ClientName(long client) => database.Read(c => c.ExecuteScalar<string?>(ClientSql, new { client }));

    private const string ClientSql = "SELECT name FROM client WHERE id = @client";

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = """
        SELECT p.id, p.client_id, c.name AS client_name, p.name, p.junior, p.times_a_week, p.hours_a_time,
               p.hitting, p.rule, p.every_weeks, p.note, p.version
        FROM player p
        JOIN client c ON c.id = p.client_id
        WHERE p.id = @id
        """;

    public Outcome Add(Who who, long client, PlayerEntry input) => database.WriteOnceAsShop(who, input.FormKey, clock.GetUtcNow(), c =>
        c.ExecuteScalar<string?>(ClientSql, new { client }) is null ? new Outcome.Absent() : new Outcome.Done(Insert(c, client, input)));

    /// <summary>For a write that creates more than the player; within its transaction.</summary>
    internal static long Insert(SqliteConnection connection, long client, PlayerEntry input) =>
        connection.ExecuteScalar<long>(AddSql, Values(client, input));

    private const string AddSql = """
        INSERT INTO player (client_id, name, junior, times_a_week, hours_a_time, hitting, rule, every_weeks, note)
        VALUES (@Id, @Name, @Junior, @TimesAWeek, @HoursATime, @Hitting, @Rule, @EveryWeeks, @Note)
        RETURNING id
        """;

    public Outcome Change(Who who, long id, PlayerEntry input) => database.WriteAsShop(who, c =>
    {
        if (c.QuerySingleOrDefault<Row>(GetSql, new { id }) is null)
            return new Outcome.Absent();
        return c.Execute(ChangeSql, Values(id, input)) == 1 ? new Outcome.Done(id) : Outcome.Stale;
    });

    private const string ChangeSql = """
        UPDATE player
        SET name = @Name, junior = @Junior, times_a_week = @TimesAWeek, hours_a_time = @HoursATime, hitting = @Hitting,
            rule = @Rule, every_weeks = @EveryWeeks, note = @Note, version = version + 1
        WHERE id = @Id AND version = @Version
        """;

    private static object Values(long id, PlayerEntry input) => new
    {
        Id = id,
        input.Version,
        Name = PersonName.Kept(input.Name),
        input.Junior,
        TimesAWeek = input.TimesAWeek ?? 0,
        HoursATime = input.HoursATime ?? 0,
        Hitting = input.Hitting.ToString(),
        Rule = input.Rule?.ToString(),
        input.EveryWeeks,
        Note = input.Note ?? "",
    };
}
