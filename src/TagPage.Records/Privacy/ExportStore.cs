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
    /// <param name="client">Whose.</param>
    /// <param name="give">Gets each file that sheets name, one after the other.</param>
    public IReadOnlyList<Sheet> Read(long client, Action<string, byte[]> give) => database.Read(c =>
    {
        c.Execute("BEGIN DEFERRED");
        try
        {
            foreach (var table in ExportPlan.Given.Where(table => table.File.Length > 0))
                foreach (var (name, bytes) in c.Query<(string, byte[])>($"SELECT {NameOf(table)}, {table.File} FROM {table.Name} WHERE {table.Where} ORDER BY 1", new { client }, buffered: false))
                    give(name, bytes);
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
        $"SELECT {string.Join(", ", table.Columns.Select(n => n == table.Mail ? $"{MailText.WordsSql} AS {n}" : n == table.File ? $"{NameOf(table)} AS {n}" : $"\"{n}\""))} FROM {table.Name} WHERE {table.Where} ORDER BY 1";

    private static string NameOf(ExportPlan.Table table) => $"'{table.Name}/' || id || '.jpg'";
}
