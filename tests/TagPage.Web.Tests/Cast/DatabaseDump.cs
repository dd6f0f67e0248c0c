using System.Globalization;
using System.Text;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Web.Tests.Cast;

public static class DatabaseDump
{
    /// <summary>Every row of every table as text: equal dumps, equal records.</summary>
    public static string Dump(this Database database) => database.Read(c =>
    {
        var text = new StringBuilder();
        foreach (var table in c.Query<string>(TablesSql).ToList())
            Append(text, c, table);
        return text.ToString();
    });

    // rowid orders nothing in WITHOUT ROWID tables; the rows are sorted as text instead.
    private const string TablesSql = "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name";

    private static void Append(StringBuilder text, SqliteConnection connection, string table)
    {
        text.AppendLine(table);
        foreach (var row in Rows(connection, table).Order(StringComparer.Ordinal))
            text.AppendLine("  " + row);
    }

    /// <summary>Read by hand, since Dapper would compile a reader for each table.</summary>
    private static List<string> Rows(SqliteConnection connection, string table)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"SELECT * FROM \"{table}\"";
        using var reader = command.ExecuteReader();
        var rows = new List<string>();
        while (reader.Read())
            rows.Add(string.Join(" | ", Enumerable.Range(0, reader.FieldCount).Select(i => $"{reader.GetName(i)}={Of(reader.GetValue(i))}")));
        return rows;
    }

    private static string Of(object value) =>
        value is byte[] bytes ? Convert.ToHexString(bytes) : Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";
}
