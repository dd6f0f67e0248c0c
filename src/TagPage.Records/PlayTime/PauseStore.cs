using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.PlayTime;

/// <summary>Days on which a player does not play.</summary>
public sealed class PauseStore(Database database, TimeProvider clock)
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

    public Outcome Add(long player, PauseEntry input) => database.Write(c => FormKeys.Once(c, input.FormKey, clock.GetUtcNow(), () =>
        c.ExecuteScalar<long?>(AddSql, Values(player, input)) is { } id ? new Outcome.Done(id) : new Outcome.Absent()));

    private const string AddSql = """
        INSERT INTO pause (player_id, from_on, to_on, note)
        SELECT id, @FromOn, @ToOn, @Note FROM player WHERE id = @Id
        RETURNING id
        """;

    public Outcome Change(long id, PauseEntry input) => database.Write<Outcome>(c =>
        c.Execute(ChangeSql, Values(id, input)) == 1 ? new Outcome.Done(id) : new Outcome.Absent());

    private const string ChangeSql = "UPDATE pause SET from_on = @FromOn, to_on = @ToOn, note = @Note WHERE id = @Id";

    public Outcome Remove(long id) => database.Write<Outcome>(c =>
        c.Execute("DELETE FROM pause WHERE id = @id", new { id }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());

    private static object Values(long id, PauseEntry input) => new { Id = id, input.FromOn, input.ToOn, Note = input.Note ?? "" };
}
