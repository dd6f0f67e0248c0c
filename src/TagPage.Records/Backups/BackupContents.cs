using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Backups;

/// <summary>How much a shop's records hold, so that the owner knows a backup again.</summary>
public sealed record BackupContents
{
    public int Clients { get; init; }
    public int Rackets { get; init; }
    public int Jobs { get; init; }

    /// <summary>The day of the last job that came in.</summary>
    public DateOnly? LastDay { get; init; }

    internal static BackupContents Of(SqliteConnection connection) => connection.QuerySingle<BackupContents>(Sql);

    private const string Sql = """
        SELECT (SELECT COUNT(*) FROM client) AS clients, (SELECT COUNT(*) FROM racket) AS rackets, (SELECT COUNT(*) FROM job) AS jobs,
               (SELECT MAX(received_on) FROM job) AS last_day
        """;
}
