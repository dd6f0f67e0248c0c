using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.PlayTime;

/// <summary>Hours played with a racket, noted by hand.</summary>
public sealed class HoursStore(Database database, TimeProvider clock)
{
    public sealed record Racket
    {
        public long Id { get; init; }
        public int Number { get; init; }
        public string PlayerName { get; init; } = "";
        public DateOnly? StrungOn { get; init; }
    }

    public sealed record Row
    {
        public long Id { get; init; }
        public long RacketId { get; init; }
        public DateOnly PlayedOn { get; init; }
        public decimal Hours { get; init; }
        public string Note { get; init; } = "";
    }

    public Racket? Of(long racket) => database.Read(c => c.QuerySingleOrDefault<Racket>(RacketSql, new { racket }));

    private const string RacketSql = """
        SELECT r.id, r.number, p.name AS player_name, f.strung_on
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN forecast f ON f.racket_id = r.id
        WHERE r.id = @racket
        """;

    /// <summary>What was noted since a day, the newest first.</summary>
    public IReadOnlyList<Row> Since(long racket, DateOnly? day) => database.Read(c => c.Query<Row>(SinceSql, new { racket, day }).AsList());

    private const string SinceSql = """
        SELECT id, racket_id, played_on, hours, note
        FROM logged_hours
        WHERE racket_id = @racket AND (@day IS NULL OR played_on >= @day)
        ORDER BY played_on DESC, id DESC
        """;

    public Row? Get(long id) => database.Read(c => c.QuerySingleOrDefault<Row>("SELECT id, racket_id, played_on, hours, note FROM logged_hours WHERE id = @id", new { id }));

    public Outcome Add(long racket, HoursEntry input) => database.Write(c => FormKeys.Once(c, input.FormKey, clock.GetUtcNow(), () =>
        c.ExecuteScalar<long?>(AddSql, new { racket, input.PlayedOn, input.Hours, Note = input.Note ?? "" }) is { } id ? new Outcome.Done(id) : new Outcome.Absent()));

    private const string AddSql = """
        INSERT INTO logged_hours (racket_id, played_on, hours, note)
        SELECT id, @PlayedOn, @Hours, @Note FROM racket WHERE id = @racket
        RETURNING id
        """;

    public Outcome Remove(long id) => database.Write<Outcome>(c =>
        c.Execute("DELETE FROM logged_hours WHERE id = @id", new { id }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());
}
