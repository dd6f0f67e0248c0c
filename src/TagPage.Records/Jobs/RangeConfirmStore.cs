using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Rackets;
using TagPage.Core.Units;
using TagPage.Records.Frames;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>That the shop confirmed tensions outside the range its catalogue gives for the frame. What was confirmed stays with the job.</summary>
public sealed class RangeConfirmStore(Database database, ShopClock clock)
{
    public sealed record Row
    {
        public DateTimeOffset ConfirmedAt { get; init; }
        public decimal MainsTension { get; init; }
        public decimal CrossesTension { get; init; }
        public TensionUnit TensionUnit { get; init; }
        public decimal? Least { get; init; }
        public decimal? Most { get; init; }
        public TensionUnit RangeUnit { get; init; }

        public Tension Mains => new(MainsTension, TensionUnit);

        public Tension Crosses => new(CrossesTension, TensionUnit);

        public TensionRange Range => new(Least, Most, RangeUnit);
    }

    /// <summary>All of a job, the newest first.</summary>
    public IReadOnlyList<Row> Of(long job) => database.Read(c => c.Query<Row>(OfSql, new { job }).AsList());

    private const string OfSql = """
        SELECT confirmed_at, mains_tension, crosses_tension, tension_unit, least, most, range_unit
        FROM range_confirm
        WHERE job_id = @job
        ORDER BY id DESC
        """;

    /// <summary>For a job that came about without the form that asks: a reminder's answer, an order of the client's, an event.</summary>
    public Outcome Confirm(Who who, long job)
    {
        var now = clock.Now;
        return database.WriteAsShop(who, c => JobStore.Get(c, who, job) is null ? new Outcome.Absent() : Note(c, job, now));
    }

    /// <summary>Keeps it if the job's tensions are outside the range of its frame and this was not confirmed before.</summary>
    internal static Outcome Note(SqliteConnection connection, long job, DateTimeOffset now)
    {
        var row = JobStore.Get(connection, Who.Shop, job)!;
        if (FrameStore.Find(connection, row.Sport, row.Frame) is { } frame && IsOutside(frame.Range, row) && !connection.Query<Row>(OfSql, new { job }).Any(before => Says(before, row, frame.Range)))
            connection.Execute(NoteSql, new
            {
                job,
                now,
                row.MainsTension,
                row.CrossesTension,
                TensionUnit = row.TensionUnit.ToString(),
                frame.Range.Least,
                frame.Range.Most,
                RangeUnit = frame.Range.Unit.ToString(),
            });
        return new Outcome.Done(job);
    }

    private const string NoteSql = """
        INSERT INTO range_confirm (job_id, confirmed_at, mains_tension, crosses_tension, tension_unit, least, most, range_unit)
        VALUES (@job, @now, @MainsTension, @CrossesTension, @TensionUnit, @Least, @Most, @RangeUnit)
        """;

    public static bool IsOutside(TensionRange range, JobRow job) => !range.Holds(job.Mains) || !range.Holds(job.Crosses);

    /// <summary>Whether exactly this was confirmed.</summary>
    public static bool Says(Row confirmed, JobRow job, TensionRange range) => (confirmed.Mains, confirmed.Crosses, confirmed.Range) == (job.Mains, job.Crosses, range);
}
