using Dapper;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.Privacy;

/// <summary>Reads everything about one client, as <see cref="ExportPlan"/> decides.</summary>
public sealed class ExportStore(Database database)
{
    /// <param name="Name">Of the table.</param>
    /// <param name="Columns">In the order of the rows' values.</param>
    /// <param name="Rows">Text, whole numbers, decimals and nulls.</param>
    public sealed record Sheet(string Name, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows);

    /// <summary>All of it as of one moment.</summary>
    public IReadOnlyList<Sheet> Read(long client) => database.Read(c =>
    {
        c.Execute("BEGIN DEFERRED");
        try
        {
            return ExportPlan.Given.Select(table => new Sheet(table.Name, table.Columns,
                [.. c.Query(SqlOf(table), new { client }).Select(row => (IReadOnlyList<object?>)[.. ((IDictionary<string, object?>)row).Values])])).ToList();
        }
        finally
        {
            c.Execute("ROLLBACK");
        }
    });

    /// <summary>Names come from the plan, never from a request.</summary>
    private static string SqlOf(ExportPlan.Table table) =>
        $"SELECT {string.Join(", ", table.Columns.Select(n => n == table.Mail ? $"{MailText.WordsSql} AS {n}" : $"\"{n}\""))} FROM {table.Name} WHERE {table.Where} ORDER BY 1";
}
