using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Readings;

/// <summary>The first reading of a job, taken right after stringing. Runs in the caller's transaction.</summary>
internal static class ReadingStore
{
    /// <summary>Keeps the reading, replaces the one there was, or takes it away where there is none.</summary>
    public static void SetFirst(SqliteConnection connection, long jobId, DateOnly on, decimal? value, long? instrumentId)
    {
        if (value is null || instrumentId is null)
            connection.Execute(RemoveSql, new { jobId });
        else
            connection.Execute(SetSql, new { jobId, on, value, instrumentId });
    }

    private const string RemoveSql = "DELETE FROM reading WHERE job_id = @jobId AND first = 1";

    private const string SetSql = """
        INSERT INTO reading (job_id, first, taken_on, instrument_id, value)
        VALUES (@jobId, 1, @on, @instrumentId, @value)
        ON CONFLICT (job_id) WHERE first = 1
        DO UPDATE SET taken_on = excluded.taken_on, instrument_id = excluded.instrument_id, value = excluded.value
        """;
}
