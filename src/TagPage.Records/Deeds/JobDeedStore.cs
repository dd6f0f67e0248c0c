using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Accounts;
using TagPage.Records.Storage;

namespace TagPage.Records.Deeds;

/// <summary>Who of the shop did what about a job. What nobody signed in for is not noted: clients' wishes, helpers' tablets at events, files.</summary>
public sealed class JobDeedStore(Database database)
{
    public sealed record Row
    {
        public JobDeed Deed { get; init; }
        public DateTimeOffset MadeAt { get; init; }

        /// <summary>The name they sign in with now.</summary>
        public string By { get; init; } = "";
    }

    /// <summary>The oldest first; nothing where one person alone ever signed in.</summary>
    public IReadOnlyList<Row> Of(Who who, long job) => database.Read(c => c.Query<Row>(OfSql, new { who.IsShop, job }).AsList());

    private const string OfSql = $"""
        SELECT d.deed, d.made_at, a.name AS by
        FROM job_deed d
        JOIN account a ON a.id = d.made_by
        WHERE d.job_id = @job AND @IsShop AND {AccountStore.Several}
        ORDER BY d.id
        """;

    /// <summary>In the transaction of what was done.</summary>
    internal static void Note(SqliteConnection connection, Who who, long job, JobDeed deed, DateTimeOffset now)
    {
        if (who.Account is { } account)
            connection.Execute(NoteSql, new { job, Deed = deed.ToString(), now, account });
    }

    private const string NoteSql = "INSERT INTO job_deed (job_id, deed, made_at, made_by) VALUES (@job, @Deed, @now, @account)";
}
