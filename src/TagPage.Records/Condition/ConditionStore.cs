using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Deeds;
using TagPage.Records.Storage;

namespace TagPage.Records.Condition;

/// <summary>What rackets looked like when they came in. Whoever works at the bench notes it.</summary>
public sealed class ConditionStore(Database database, TimeProvider clock)
{
    /// <summary>Of a job; with nothing in it where nothing was noted.</summary>
    public ConditionRow? OfJob(Who who, long job) => database.Read(c => Read(c, $"{Select} WHERE j.id = @id AND @IsShop", who, job)).SingleOrDefault();

    /// <summary>Of a racket: all jobs for which something was noted or photographed, the newest first.</summary>
    public IReadOnlyList<ConditionRow> OfRacket(Who who, long racket) => database.Read(c => Read(c, OfRacketSql, who, racket));

    private const string Select = """
        SELECT j.id AS job_id, j.ticket, j.received_on, k.frame, k.frame_words, k.grommets, k.grommets_words, k.bumper, k.bumper_words, k.grip, k.grip_words,
               COALESCE(k.version, 0) AS version
        FROM job j
        LEFT JOIN condition k ON k.job_id = j.id
        """;

    private const string OfRacketSql = $"""
        {Select}
        WHERE j.racket_id = @id AND @IsShop AND (k.job_id IS NOT NULL OR EXISTS (SELECT 1 FROM photo p WHERE p.job_id = j.id))
        ORDER BY j.received_on DESC, j.id DESC
        """;

    private static List<ConditionRow> Read(SqliteConnection connection, string sql, Who who, long id)
    {
        var rows = connection.Query<ConditionRow>(sql, new { id, who.IsShop }).AsList();
        return rows.ConvertAll(row => row with { Photos = PhotoStore.OfJob(connection, row.JobId) });
    }

    /// <summary>What is entered takes the place of what was noted for the job before.</summary>
    public Outcome Note(Who who, long job, ConditionEntry input)
    {
        var now = clock.GetUtcNow();
        return database.WriteAsShop(who, c => !HasJob(c, job) ? new Outcome.Absent() : Note(c, who, job, input, now));
    }

    internal static bool HasJob(SqliteConnection connection, long job) => connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM job WHERE id = @job)", new { job });

    /// <summary>In somebody's transaction, who makes sure that the job is there. What is noted already may be sent again.</summary>
    internal static Outcome Note(SqliteConnection connection, Who who, long job, ConditionEntry input, DateTimeOffset now)
    {
        var values = Values(job, input);
        if ((input.IsEmpty && input.Version == 0) || connection.ExecuteScalar<bool>(IsNotedSql, values))
            return new Outcome.Done(job);
        if (connection.Execute(input.Version == 0 ? FirstSql : AgainSql, values) == 0)
            return Outcome.Stale;
        JobDeedStore.Note(connection, who, job, JobDeed.Inspected, now);
        return new Outcome.Done(job);
    }

    private static object Values(long job, ConditionEntry input) => new
    {
        job,
        input.Version,
        Frame = input.Frame?.ToString(),
        FrameWords = input.FrameWords ?? "",
        Grommets = input.Grommets?.ToString(),
        GrommetsWords = input.GrommetsWords ?? "",
        Bumper = input.Bumper?.ToString(),
        BumperWords = input.BumperWords ?? "",
        Grip = input.Grip?.ToString(),
        GripWords = input.GripWords ?? "",
    };

    private const string IsNotedSql = """
        SELECT EXISTS (
          SELECT 1 FROM condition
          WHERE job_id = @job
            AND (frame, frame_words, grommets, grommets_words, bumper, bumper_words, grip, grip_words)
             IS (@Frame, @FrameWords, @Grommets, @GrommetsWords, @Bumper, @BumperWords, @Grip, @GripWords))
        """;

    private const string FirstSql = """
        INSERT INTO condition (job_id, frame, frame_words, grommets, grommets_words, bumper, bumper_words, grip, grip_words)
        VALUES (@job, @Frame, @FrameWords, @Grommets, @GrommetsWords, @Bumper, @BumperWords, @Grip, @GripWords)
        ON CONFLICT DO NOTHING
        """;

    private const string AgainSql = """
        UPDATE condition SET
          frame = @Frame, frame_words = @FrameWords, grommets = @Grommets, grommets_words = @GrommetsWords,
          bumper = @Bumper, bumper_words = @BumperWords, grip = @Grip, grip_words = @GripWords, version = version + 1
        WHERE job_id = @job AND version = @Version
        """;
}
