using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Readings;

/// <summary>Readings taken after the first one: at a check-up, or before the strings are cut out.</summary>
public sealed class LaterReadingStore(Database database, TimeProvider clock)
{
    /// <summary>The strings of a job; null unless they were put in.</summary>
    public MeasuredBed? Bed(long job) => database.Read(c => c.QuerySingleOrDefault<MeasuredBed>(BedSql, new { job }));

    private const string BedSql = """
        SELECT j.id AS job_id, j.ticket, j.racket_id, r.number, p.name AS player_name, j.strung_on, j.ended_on,
               g.value AS first, g.instrument_id, i.name AS instrument, i.scale
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        LEFT JOIN reading g ON g.job_id = j.id AND g.first = 1
        LEFT JOIN instrument i ON i.id = g.instrument_id
        WHERE j.id = @job AND j.strung_on IS NOT NULL
        """;

    private const string Columns = """
        SELECT g.id, g.job_id, j.ticket, j.racket_id, g.first, j.strung_on, g.taken_on, g.taken_at, g.instrument_id,
               i.name AS instrument, i.scale, g.value, g.hours, g.note, o.instrument_id AS first_instrument_id, o.value AS first_value
        FROM reading g
        JOIN job j ON j.id = g.job_id AND j.strung_on IS NOT NULL
        JOIN instrument i ON i.id = g.instrument_id
        LEFT JOIN reading o ON o.job_id = g.job_id AND o.first = 1
        """;

    /// <summary>All readings of one stringing, the oldest first.</summary>
    public IReadOnlyList<ReadingRow> Of(long job) => database.Read(c => c.Query<ReadingRow>(OfSql, new { job }).AsList());

    private const string OfSql = $"{Columns} WHERE g.job_id = @job ORDER BY g.first DESC, g.taken_on, g.taken_at, g.id";

    public ReadingRow? Get(long id) => database.Read(c => c.QuerySingleOrDefault<ReadingRow>(GetSql, new { id }));

    private const string GetSql = $"{Columns} WHERE g.id = @id AND g.first = 0";

    public Outcome Add(long job, ReadingEntry input) => database.Write(c => FormKeys.Once(c, input.FormKey, clock.GetUtcNow(), () => Add(c, job, input)));

    /// <summary>For a write that does more; within its transaction.</summary>
    internal static Outcome Add(SqliteConnection connection, long job, ReadingEntry input)
    {
        if (!HasInstrument(connection, input.InstrumentId))
            return new Outcome.Refused(new InstrumentUnknown(nameof(input.InstrumentId)));
        var id = connection.ExecuteScalar<long?>(AddSql, new { job, input.TakenOn, TakenAt = input.TakenAt?.PadLeft(5, '0'), input.InstrumentId, input.Value, Note = input.Note ?? "" });
        return id is null ? new Outcome.Absent() : new Outcome.Done(id.Value);
    }

    internal static bool HasInstrument(SqliteConnection connection, long? id) =>
        connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM instrument WHERE id = @id)", new { id });

    private const string AddSql = """
        INSERT INTO reading (job_id, first, taken_on, taken_at, instrument_id, value, note)
        SELECT j.id, 0, @TakenOn, @TakenAt, @InstrumentId, @Value, @Note
        FROM job j
        WHERE j.id = @job AND j.strung_on IS NOT NULL
        RETURNING id
        """;

    public Outcome Remove(long id) => database.Write<Outcome>(c =>
        c.Execute("DELETE FROM reading WHERE id = @id AND first = 0", new { id }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());
}
