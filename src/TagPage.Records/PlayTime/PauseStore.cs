using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.PlayTime;

/// <summary>
/// Days on which a player is not playing. The household says when a pause begins and ends; days and a note of their own
/// are for the shop to enter.
/// </summary>
public sealed class PauseStore(Database database, ShopClock clock)
{
    public sealed record Row
    {
        public long Id { get; init; }
        public long PlayerId { get; init; }
        public string PlayerName { get; init; } = "";
        public DateOnly FromOn { get; init; }
        public DateOnly? ToOn { get; init; }
        public string Note { get; init; } = "";
    }

    /// <summary>Null for no such player.</summary>
    public string? PlayerName(long player) => database.Read(c => c.ExecuteScalar<string?>("SELECT name FROM player WHERE id = @player", new { player }));

    private const string Columns = """
        SELECT s.id, s.player_id, p.name AS player_name, s.from_on, s.to_on, s.note
        FROM pause s
        JOIN player p ON p.id = s.player_id
        """;

    /// <summary>A player's pauses, the newest first.</summary>
    public IReadOnlyList<Row> Of(long player) => database.Read(c => c.Query<Row>(OfSql, new { player }).AsList());

    private const string OfSql = $"{Columns} WHERE s.player_id = @player ORDER BY s.from_on DESC, s.id DESC";

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql, new { id }));

    private const string GetSql = $"{Columns} WHERE s.id = @id";

    /// <summary>The first day of the pause the player is in today, or null.</summary>
    public DateOnly? Now(Who who, long player) =>
        database.Read(c => c.QueryFirstOrDefault<DateOnly?>(NowSql, new { who.IsShop, who.ClientId, player, clock.Today }));

    private const string NowSql = $"""
        SELECT s.from_on
        FROM pause s
        JOIN player p ON p.id = s.player_id
        WHERE p.id = @player AND s.from_on <= @Today AND (s.to_on IS NULL OR s.to_on >= @Today) AND {Who.ChangesPlayer}
        ORDER BY s.to_on IS NOT NULL, s.id DESC
        LIMIT 1
        """;

    /// <summary>From today on, with no end yet. Idempotent. Done tells the player.</summary>
    public Outcome Begin(Who who, long player) => Write(who, player, BeginSql);

    private const string BeginSql = """
        INSERT INTO pause (player_id, from_on)
        SELECT @player, @today
        WHERE NOT EXISTS (SELECT 1 FROM pause WHERE player_id = @player AND from_on <= @today AND (to_on IS NULL OR to_on >= @today))
        """;

    /// <summary>Playing again today: yesterday was the last day of the pause, and one that began today is removed.</summary>
    public Outcome End(Who who, long player) => Write(who, player, EndSql);

    private const string EndSql = """
        DELETE FROM pause WHERE player_id = @player AND from_on = @today;
        UPDATE pause SET to_on = @Yesterday WHERE player_id = @player AND from_on < @today AND (to_on IS NULL OR to_on >= @today);
        """;

    private Outcome Write(Who who, long player, string sql)
    {
        var today = clock.Today;
        return database.Write<Outcome>(c =>
        {
            if (!c.ExecuteScalar<bool>(MaySql, new { who.IsShop, who.ClientId, player }))
                return new Outcome.Absent();
            c.Execute(sql, new { player, today, Yesterday = today.AddDays(-1) });
            return new Outcome.Done(player);
        });
    }

    private const string MaySql = $"SELECT EXISTS (SELECT 1 FROM player p WHERE p.id = @player AND {Who.ChangesPlayer})";

    public Outcome Add(Who who, long player, PauseEntry input) => database.Write(c =>
        !c.ExecuteScalar<bool>("SELECT @IsShop AND EXISTS (SELECT 1 FROM player WHERE id = @player)", new { who.IsShop, player }) ? new Outcome.Absent()
        : Fault(input) is { } why ? new Outcome.Refused(why)
        : FormKeys.Once(c, who, input.FormKey, clock.Now, () => Add(c, who, player, input)));

    private static Outcome Add(SqliteConnection connection, Who who, long player, PauseEntry input) =>
        connection.ExecuteScalar<long?>(AddSql, Values(who, player, input)) is { } id ? new Outcome.Done(id) : new Outcome.Absent();

    private const string AddSql = """
        INSERT INTO pause (player_id, from_on, to_on, note)
        SELECT id, @FromOn, @ToOn, @Note FROM player WHERE id = @Id AND @IsShop
        RETURNING id
        """;

    /// <summary>Done tells the player.</summary>
    public Outcome Change(Who who, long id, PauseEntry input) => database.Write<Outcome>(c =>
        Fault(input) is { } why && who.IsShop ? new Outcome.Refused(why)
        : c.ExecuteScalar<long?>(ChangeSql, Values(who, id, input)) is { } player ? new Outcome.Done(player) : new Outcome.Absent());

    private const string ChangeSql = """
        UPDATE pause SET from_on = @FromOn, to_on = @ToOn, note = @Note WHERE id = @Id AND @IsShop RETURNING player_id
        """;

    /// <summary>Done tells the player.</summary>
    public Outcome Remove(Who who, long id) => database.Write<Outcome>(c =>
        c.ExecuteScalar<long?>(RemoveSql, new { who.IsShop, id }) is { } player ? new Outcome.Done(player) : new Outcome.Absent());

    private const string RemoveSql = "DELETE FROM pause WHERE id = @id AND @IsShop RETURNING player_id";

    private static PauseEndsEarly? Fault(PauseEntry input) => input.ToOn < input.FromOn ? new PauseEndsEarly() : null;

    private static object Values(Who who, long id, PauseEntry input) => new { Id = id, who.IsShop, input.FromOn, input.ToOn, Note = input.Note ?? "" };
}
