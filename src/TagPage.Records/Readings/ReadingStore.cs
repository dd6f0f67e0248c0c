using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Deeds;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Readings;

/// <summary>
/// What was measured on strings: the first reading right after stringing, and later ones by the shop on its instruments or by the
/// household on their phone.
/// </summary>
public sealed class ReadingStore(Database database, ShopClock clock)
{
    /// <summary>
    /// What readings of households are taken on, as it is called until the shop calls it something else. They are never compared
    /// with those of the shop's instruments.
    /// </summary>
    public const string Phones = "Clients’ phones";

    /// <summary>The shop measures any strings that were put in, the household those that are in a racket of theirs.</summary>
    private const string Measures = $"""
        j.strung_on IS NOT NULL AND {Who.ChangesRacket}
        AND (@IsShop OR (j.ended_on IS NULL AND j.id = (SELECT f.bed_id FROM forecast f WHERE f.racket_id = r.id)))
        """;

    /// <summary>The strings of a job; null unless they were put in, and are theirs to measure.</summary>
    public MeasuredBed? Bed(Who who, long job) => database.Read(c => Bed(c, who, job));

    private static MeasuredBed? Bed(SqliteConnection connection, Who who, long job) =>
        connection.QuerySingleOrDefault<MeasuredBed>(BedSql, new { who.IsShop, who.ClientId, job });

    private const string BedSql = $"""
        SELECT j.id AS job_id, j.ticket, j.racket_id, r.number, p.name AS player_name, j.strung_on, j.ended_on,
               g.value AS first, g.instrument_id, i.name AS instrument, i.scale
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        LEFT JOIN reading g ON g.job_id = j.id AND g.first = 1
        LEFT JOIN instrument i ON i.id = g.instrument_id
        WHERE j.id = @job AND {Measures}
        """;

    private const string Columns = """
        SELECT g.id, g.job_id, j.ticket, j.racket_id, g.first, j.strung_on, g.taken_on, g.taken_at, g.instrument_id,
               i.name AS instrument, i.scale, g.value, g.hours, COALESCE(g.doubtful, 0) AS doubtful, g.note, o.instrument_id AS first_instrument_id, o.value AS first_value
        FROM reading g
        JOIN job j ON j.id = g.job_id AND j.strung_on IS NOT NULL
        JOIN instrument i ON i.id = g.instrument_id
        LEFT JOIN reading o ON o.job_id = g.job_id AND o.first = 1
        """;

    /// <summary>All readings of one stringing, the oldest first.</summary>
    public IReadOnlyList<ReadingRow> Of(long job) => database.Read(c => c.Query<ReadingRow>(OfSql, new { job }).AsList());

    private const string OfSql = $"{Columns} WHERE g.job_id = @job ORDER BY g.first DESC, g.taken_on, g.taken_at, g.id";

    /// <summary>One after the first.</summary>
    public ReadingRow? Get(Who who, long id) => database.Read(c => c.QuerySingleOrDefault<ReadingRow>(GetSql, new { who.IsShop, id }));

    private const string GetSql = $"{Columns} WHERE g.id = @id AND g.first = 0 AND @IsShop";

    /// <summary>What the household measured on strings, the oldest first.</summary>
    public IReadOnlyList<Pitch> Pitches(Who who, long job) =>
        database.Read(c => c.Query<Pitch>(PitchesSql, new { who.ClientId, job }).AsList());

    private const string PitchesSql = """
        SELECT g.taken_on, g.value
        FROM reading g
        JOIN instrument i ON i.id = g.instrument_id
        JOIN job j ON j.id = g.job_id
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        WHERE j.id = @job AND p.client_id = @ClientId AND i.kind = 'Phones'
        ORDER BY g.taken_on, g.id
        """;

    /// <summary>A reading after the first. A household's is taken today, on their phone, whatever else the entry says.</summary>
    public Outcome Add(Who who, long job, ReadingEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.Write(c => Bed(c, who, job) is null
            ? new Outcome.Absent()
            : FormKeys.Once(c, who, input.FormKey, now, () => Noted(c, who, job, now, Add(c, who, job, who.IsShop ? input : new ReadingEntry { TakenOn = today, Value = input.Value }))));
    }

    private static Outcome Noted(SqliteConnection connection, Who who, long job, DateTimeOffset now, Outcome added)
    {
        if (added is Outcome.Done)
            JobDeedStore.Note(connection, who, job, JobDeed.Measured, now);
        return added;
    }

    /// <summary>For a write that does more; within its transaction.</summary>
    internal static Outcome Add(SqliteConnection connection, Who who, long job, ReadingEntry input)
    {
        if (Fault(connection, who, input) is { } why)
            return new Outcome.Refused(why);
        var id = connection.ExecuteScalar<long?>(AddSql, new
        {
            who.IsShop,
            who.ClientId,
            job,
            input.TakenOn,
            TakenAt = input.TakenAt?.PadLeft(5, '0'),
            InstrumentId = who.IsShop ? input.InstrumentId : PhonesId(connection),
            input.Value,
            Note = input.Note ?? "",
        });
        return id is null ? new Outcome.Absent() : new Outcome.Done(id.Value);
    }

    private static Refusal? Fault(SqliteConnection connection, Who who, ReadingEntry input) =>
        !who.IsShop ? ReadingRules.PitchFaults(input.Value).FirstOrDefault()
        : ReadingRules.Faults(input.Value, input.InstrumentId, nameof(input.Value)).FirstOrDefault()
            ?? (HasInstrument(connection, input.InstrumentId) ? null : new InstrumentUnknown(nameof(input.InstrumentId)));

    internal static bool HasInstrument(SqliteConnection connection, long? id) =>
        connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM instrument WHERE id = @id)", new { id });

    private static long PhonesId(SqliteConnection connection) => connection.ExecuteScalar<long>(PhonesSql, new { Phones });

    private const string PhonesSql = """
        INSERT INTO instrument (name, scale, kind)
        SELECT @Phones || CASE WHEN EXISTS (SELECT 1 FROM instrument WHERE name = @Phones) THEN ' ' || (SELECT MAX(id) + 1 FROM instrument) ELSE '' END, 'Hertz', 'Phones'
        WHERE NOT EXISTS (SELECT 1 FROM instrument WHERE kind = 'Phones');
        SELECT id FROM instrument WHERE kind = 'Phones';
        """;

    private const string AddSql = $"""
        INSERT INTO reading (job_id, first, taken_on, taken_at, instrument_id, value, note)
        SELECT j.id, 0, @TakenOn, @TakenAt, @InstrumentId, @Value, @Note
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        WHERE j.id = @job AND {Measures}
        RETURNING id
        """;

    /// <summary>A doubtful reading counts after all, says the shop. Done tells the racket.</summary>
    public Outcome Count(Who who, long id) => database.Write<Outcome>(c =>
        c.ExecuteScalar<long?>(CountSql, new { who.IsShop, id }) is { } racket ? new Outcome.Done(racket) : new Outcome.Absent());

    private const string CountSql = """
        UPDATE reading SET doubtful = 0
        WHERE id = @id AND doubtful = 1 AND @IsShop
        RETURNING (SELECT racket_id FROM job WHERE job.id = reading.job_id)
        """;

    /// <summary>Only the shop removes readings, and only later ones: the first belongs to the job's form.</summary>
    public Outcome Remove(Who who, long id) => database.Write<Outcome>(c =>
        c.Execute("DELETE FROM reading WHERE id = @id AND first = 0 AND @IsShop", new { who.IsShop, id }) == 1 ? new Outcome.Done(id) : new Outcome.Absent());

    /// <summary>What is wrong with a first reading.</summary>
    internal static Refusal? FirstFault(SqliteConnection connection, decimal? value, long? instrumentId) =>
        ReadingRules.Faults(value, instrumentId).FirstOrDefault()
        ?? (value is null || HasInstrument(connection, instrumentId) ? null : new InstrumentUnknown("InstrumentId"));

    /// <summary>
    /// The first reading of a job, in the caller's transaction: keeps it, replaces the previous one, or removes it if there is
    /// none.
    /// </summary>
    internal static void SetFirst(SqliteConnection connection, long job, DateOnly on, decimal? value, long? instrumentId)
    {
        if (value is null || instrumentId is null)
            connection.Execute("DELETE FROM reading WHERE job_id = @job AND first = 1", new { job });
        else
            connection.Execute(SetFirstSql, new { job, on, value, instrumentId });
    }

    private const string SetFirstSql = """
        INSERT INTO reading (job_id, first, taken_on, instrument_id, value)
        VALUES (@job, 1, @on, @instrumentId, @value)
        ON CONFLICT (job_id) WHERE first = 1
        DO UPDATE SET taken_on = excluded.taken_on, instrument_id = excluded.instrument_id, value = excluded.value
        """;
}
