using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Reads one job whole.</summary>
public sealed class JobStore(Database database)
{
    /// <summary>Null for a job that is not there, for a visit, and for everybody but the shop.</summary>
    public JobRow? Get(Who who, long id) => database.Read(c => Get(c, who, id));

    internal static JobRow? Get(SqliteConnection connection, Who who, long id) => connection.QuerySingleOrDefault<JobRow>(GetSql, new { who.IsShop, id });

    internal const string GetSql = $"{GetWithVisitsSql} AND NOT is_visit";

    /// <summary>The same with visits, for what is promised, handed out and paid: those have neither strings nor tensions.</summary>
    public JobRow? GetWithVisits(Who who, long id) => database.Read(c => GetWithVisits(c, who, id));

    internal static JobRow? GetWithVisits(SqliteConnection connection, Who who, long id) => connection.QuerySingleOrDefault<JobRow>(GetWithVisitsSql, new { who.IsShop, id });

    private const string GetWithVisitsSql = $"SELECT {JobRow.Columns} FROM job_card WHERE id = @id AND @IsShop";
}
