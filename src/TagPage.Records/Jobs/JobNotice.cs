using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Jobs;

/// <summary>A job as a message to its client tells of it.</summary>
public sealed record JobNotice
{
    public long ClientId { get; init; }
    public string Client { get; init; } = "";
    public string? Mail { get; init; }
    public string Language { get; init; } = "en";
    public string Player { get; init; } = "";
    public int Number { get; init; }
    public long? PriceMinor { get; init; }

    internal static JobNotice? Of(SqliteConnection connection, long job) => connection.QuerySingleOrDefault<JobNotice>(OfSql, new { job });

    private const string OfSql = """
        SELECT c.id AS client_id, c.name AS client, c.mail, c.language, p.name AS player, r.number, j.price_minor
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE j.id = @job
        """;
}
