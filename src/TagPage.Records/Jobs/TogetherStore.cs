using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>What is at the shop of one client, or of all the clients a payer pays for. The shop alone sees it.</summary>
public sealed class TogetherStore(Database database)
{
    /// <summary>More rackets than this are not handed over a counter.</summary>
    public const int Most = 100;

    public sealed record Row
    {
        public string Name { get; init; } = "";

        /// <summary>What is announced or waits first, what is ready last; each by ticket.</summary>
        public IReadOnlyList<JobRow> Jobs { get; init; } = [];

        public IEnumerable<JobRow> Announced => Jobs.Where(job => job.Expected);

        public IEnumerable<JobRow> Waiting => Jobs.Where(job => job is { IsOpen: true, Expected: false });

        public IEnumerable<JobRow> Ready => Jobs.Where(job => job.State == JobState.Strung);
    }

    /// <summary>Null for a client or payer who is not there.</summary>
    public Row? Get(Who who, Party party) => database.Read(c =>
        c.QuerySingleOrDefault<string?>(NameSql, new { who.IsShop, party.ClientId, party.PayerId }) is { } name ? new Row { Name = name, Jobs = Jobs(c, who, party) } : null);

    private const string NameSql = """
        SELECT name FROM client WHERE id = @ClientId AND @IsShop
        UNION ALL
        SELECT name FROM payer WHERE id = @PayerId AND @IsShop
        """;

    /// <summary>In the caller's transaction.</summary>
    internal static IReadOnlyList<JobRow> Jobs(SqliteConnection connection, Who who, Party party) =>
        connection.Query<JobRow>(JobsSql, new { who.IsShop, party.ClientId, party.PayerId, Most }).AsList();

    internal const string JobsSql = $"""
        SELECT {JobRow.Columns}
        FROM job_card
        WHERE state IN ('Waiting', 'OnMachine', 'Strung') AND client_id IN (SELECT id FROM client WHERE id = @ClientId OR payer_id = @PayerId) AND @IsShop
        ORDER BY state = 'Strung', expected, ticket
        LIMIT @Most
        """;
}
