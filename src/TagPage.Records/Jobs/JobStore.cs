using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Reads one job whole.</summary>
public sealed class JobStore(Database database)
{
    public JobRow? Get(long id) => database.Read(c => Get(c, id));

    internal static JobRow? Get(SqliteConnection connection, long id) => connection.QuerySingleOrDefault<JobRow>(GetSql, new { id });

    internal const string GetSql = $"SELECT {JobRow.Columns} FROM job_card WHERE id = @id";
}
