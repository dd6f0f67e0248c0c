using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Where a ticket's racket was left and is to be collected. In the transaction of what writes the ticket.</summary>
internal static class JobStopStore
{
    /// <summary>What stands against the stops of a ticket.</summary>
    /// <param name="connection">Of the transaction.</param>
    /// <param name="input">As entered.</param>
    /// <param name="was">As it stood, whose stops may stay although they are no longer used; null for a new one.</param>
    public static Refusal? WhyNot(SqliteConnection connection, StopChoice input, JobRow? was)
    {
        if (IsUnknown(connection, input.LeftAt, was))
            return new StopUnknown(nameof(input.LeftAtId));
        if (IsUnknown(connection, input.CollectAt, was))
            return new StopUnknown(nameof(input.CollectAtId));
        return was is { State: JobState.Strung, BroughtAt: not null } && input.CollectAt != was.CollectAtId
            ? new BroughtAlready(nameof(input.CollectAtId), was.CollectAt!)
            : null;
    }

    private static bool IsUnknown(SqliteConnection connection, long? stop, JobRow? was) =>
        stop is { } id && id != was?.LeftAtId && id != was?.CollectAtId && !IsUsed(connection, id);

    public static bool IsUsed(SqliteConnection connection, long id) => connection.ExecuteScalar<bool>(IsUsedSql, new { id });

    private const string IsUsedSql = "SELECT EXISTS (SELECT 1 FROM stop WHERE id = @id AND is_ended = 0)";

    /// <summary>What was fetched or brought stays so where the stop stays the same.</summary>
    public static void Set(SqliteConnection connection, long job, StopChoice stops) => Set(connection, job, stops.LeftAt, stops.CollectAt);

    public static void Set(SqliteConnection connection, long job, long? left, long? collect) =>
        connection.Execute(left is null && collect is null ? "DELETE FROM job_stop WHERE job_id = @job" : SetSql, new { job, left, collect });

    private const string SetSql = """
        INSERT INTO job_stop (job_id, left_at, collect_at)
        VALUES (@job, @left, @collect)
        ON CONFLICT (job_id) DO UPDATE
        SET left_at = @left, fetched_at = CASE WHEN left_at IS @left THEN fetched_at END,
            collect_at = @collect, brought_at = CASE WHEN collect_at IS @collect THEN brought_at END
        """;

    /// <summary>Whoever has it in hand no longer has to fetch it.</summary>
    public static void Fetched(SqliteConnection connection, long job, DateTimeOffset now) => connection.Execute(FetchedSql, new { job, now });

    private const string FetchedSql = "UPDATE job_stop SET fetched_at = @now WHERE job_id = @job AND left_at IS NOT NULL AND fetched_at IS NULL";
}
