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
        var rows = connection.Query($"SELECT * FROM \"{table}\"").Select(row => string.Join(" | ", ((IDictionary<string, object?>)row).Select(v => $"{v.Key}={Of(v.Value)}")));
        text.AppendLine(table);
        foreach (var row in rows.Order(StringComparer.Ordinal))
            text.AppendLine("  " + row);
    }

    private static string Of(object? value) =>
        value is byte[] bytes ? Convert.ToHexString(bytes) : Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";
}
