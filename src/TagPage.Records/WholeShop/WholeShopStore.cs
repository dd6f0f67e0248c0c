using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Privacy;
using TagPage.Records.Storage;

namespace TagPage.Records.WholeShop;

/// <summary>Gives a whole shop away as tables of text, and takes one in where there is none yet: all of it or nothing.</summary>
public sealed class WholeShopStore(Database database, TimeProvider clock)
{
    /// <param name="Name">In the schema.</param>
    /// <param name="Type">Of the schema, in capitals.</param>
    /// <param name="NotNull">There has to be something.</param>
    /// <param name="IsFile">Its bytes are a file of their own.</param>
    private sealed record Column(string Name, string Type, bool NotNull, bool IsFile);

    /// <param name="Table">Of the plan.</param>
    /// <param name="Header">Names of columns, in the order of the cells.</param>
    /// <param name="Rows">With the line of the file that each begins on.</param>
    public sealed record Part(string Table, IReadOnlyList<string> Header, IReadOnlyList<(int Line, string[] Cells)> Rows)
    {
        /// <summary>The bytes of a file that a cell names; null where there is none.</summary>
        public Func<string, byte[]?> File { get; init; } = _ => null;
    }

    /// <summary>Every table as of one moment, its rows in the order of their keys; bytes as Base64.</summary>
    /// <param name="who">Who asks.</param>
    /// <param name="give">Gets each file that cells name, one after the other; null where nobody wants them.</param>
    public IReadOnlyList<ExportStore.Sheet>? Read(Who who, Action<string, byte[]>? give = null) => who.IsOwner ? database.Read(c =>
    {
        c.Execute("BEGIN DEFERRED");
        try
        {
            foreach (var table in give is null ? [] : WholeShopPlan.Given)
                foreach (var column in table.Files)
                    foreach (var (name, bytes) in c.Query<(string, byte[])>($"SELECT {NameOf(table, column)}, {column} FROM {table.Name} ORDER BY id", buffered: false))
                        give!(name, bytes);
            return WholeShopPlan.Given.Select(table => Sheet(c, table)).ToList();
        }
        finally
        {
            c.Execute("ROLLBACK");
        }
    }) : null;

    private static ExportStore.Sheet Sheet(SqliteConnection connection, WholeShopPlan.Table table)
    {
        var columns = Columns(connection, table);
        List<string> names = [.. columns.Select(column => column.Name)];
        var rows = connection.Query($"SELECT {string.Join(", ", columns.Select(column => column.IsFile ? $"{NameOf(table, column.Name)} AS {column.Name}" : $"\"{column.Name}\""))} FROM {table.Name} ORDER BY {Key(connection, table.Name)}");
        return new ExportStore.Sheet(table.Name, names, [.. rows.Select(row => (IReadOnlyList<object?>)[.. ((IDictionary<string, object?>)row).Values.Select(value => value is byte[] bytes ? Convert.ToBase64String(bytes) : value)])]);
    }

    private static string NameOf(WholeShopPlan.Table table, string column) => $"'{table.Name}/' || id || '-{column}.jpg'";

    // Names come from the plan and the schema, never from a request. What is worked out from other columns is not among them.
    private static List<Column> Columns(SqliteConnection connection, WholeShopPlan.Table table) =>
        [.. connection.Query<(string Name, string Type, bool NotNull)>(ColumnsSql, new { table.Name }).Select(c => new Column(c.Name, c.Type, c.NotNull, table.Files.Contains(c.Name))).Where(c => !table.Stays.Contains(c.Name))];

    private const string ColumnsSql = """SELECT name, type, "notnull" OR pk > 0 FROM pragma_table_xinfo(@Name) WHERE hidden = 0 ORDER BY cid""";

    private static string Key(SqliteConnection connection, string table) =>
        string.Join(", ", connection.Query<string>("SELECT name FROM pragma_table_info(@table) WHERE pk > 0 ORDER BY pk", new { table }).Select(name => $"\"{name}\""));

    /// <summary>Whose records keep another shop out; null where there are none.</summary>
    public string? InUse() => database.Read(InUse);

    private static string? InUse(SqliteConnection connection) =>
        WholeShopPlan.InUse.FirstOrDefault(table => connection.ExecuteScalar<bool>($"SELECT EXISTS (SELECT 1 FROM {table})"));

    /// <summary>Takes a shop in, once per form key; what the empty one had of settings gives way.</summary>
    public Outcome TakeIn(Who who, string formKey, IReadOnlyList<Part> parts)
    {
        try
        {
            return database.WriteOnceAsOwner(who, formKey, clock.GetUtcNow(), c => InUse(c) is { } table ? new Outcome.Refused(new ShopInUse(table)) : Take(c, parts));
        }
        catch (DoesNotFitException fault)
        {
            return new Outcome.Refused(fault.Why);
        }
    }

    /// <summary>Ends the transaction, so that nothing of it stays.</summary>
    private sealed class DoesNotFitException(ShopFileWrong why) : Exception
    {
        public ShopFileWrong Why => why;
    }

    private static Outcome.Done Take(SqliteConnection connection, IReadOnlyList<Part> parts)
    {
        connection.Execute("PRAGMA defer_foreign_keys = ON");
        foreach (var table in WholeShopPlan.Given.Reverse())
            connection.Execute($"DELETE FROM {table.Name}");
        foreach (var table in WholeShopPlan.Given)
            Insert(connection, parts.FirstOrDefault(part => part.Table == table.Name) ?? throw new DoesNotFitException(new ShopFileWrong(table.Name, 0, "", ShopFileFault.FileMissing)), Columns(connection, table));
        if (connection.QueryFirstOrDefault<Dangling>(DanglingSql) is { } dangling)
            throw Wrong(connection, parts.First(part => part.Table == dangling.Child), dangling);
        return new Outcome.Done(1);
    }

    private sealed record Dangling
    {
        public string Child { get; init; } = "";
        public string Column { get; init; } = "";
        public string Parent { get; init; } = "";
        public string Key { get; init; } = "";
    }

    private const string DanglingSql = """
        SELECT c."table" AS child, f."from" AS "column", c.parent, f."to" AS "key"
        FROM pragma_foreign_key_check c
        JOIN pragma_foreign_key_list(c."table") f ON f.id = c.fkid
        """;

    /// <summary>The check tells a record by its number in the table; its line is told by what it refers to.</summary>
    private static DoesNotFitException Wrong(SqliteConnection connection, Part part, Dangling dangling)
    {
        var refersTo = connection.ExecuteScalar<string>($"""
            SELECT CAST(x."{dangling.Column}" AS TEXT) FROM "{dangling.Child}" x
            WHERE x."{dangling.Column}" IS NOT NULL AND NOT EXISTS (SELECT 1 FROM "{dangling.Parent}" p WHERE p."{dangling.Key}" = x."{dangling.Column}")
            """);
        var at = part.Header.ToList().IndexOf(dangling.Column);
        return Wrong(part, part.Rows.First(row => Means(row.Cells[at], refersTo!)).Line, dangling.Column, ShopFileFault.RefersToNothing);
    }

    private static bool Means(string cell, string value) => cell == value || (long.TryParse(cell, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && $"{number}" == value);

    private static void Insert(SqliteConnection connection, Part part, List<Column> columns)
    {
        var header = part.Header.Select(name => columns.Find(column => column.Name == name) ?? throw Wrong(part, 1, name, ShopFileFault.UnknownColumn)).ToList();
        if (columns.Find(column => !header.Contains(column)) is { } missing)
            throw Wrong(part, 1, missing.Name, ShopFileFault.MissingColumn);
        using var command = connection.CreateCommand();
        command.CommandText = $"INSERT INTO {part.Table} ({string.Join(", ", header.Select(c => $"\"{c.Name}\""))}) VALUES ({string.Join(", ", header.Select((_, i) => $"@p{i}"))})";
        var parameters = header.Select((_, i) => command.Parameters.Add(new SqliteParameter($"@p{i}", null))).ToList();
        foreach (var (line, cells) in part.Rows)
        {
            if (cells.Length != header.Count)
                throw Wrong(part, line, "", ShopFileFault.CellsMissing);
            for (var i = 0; i < cells.Length; i++)
                parameters[i].Value = Value(part, line, header[i], cells[i]);
            Run(command, part, line);
        }
    }

    private static void Run(SqliteCommand command, Part part, int line)
    {
        try
        {
            command.ExecuteNonQuery();
        }
        catch (SqliteException e) when (e.SqliteErrorCode is 19 or 20)
        {
            throw Wrong(part, line, "", ShopFileFault.DoesNotFit);
        }
    }

    /// <summary>An empty cell is nothing, or empty text where there has to be some.</summary>
    private static object Value(Part part, int line, Column column, string cell) => (column.Type, cell) switch
    {
        _ when column.IsFile => part.File(cell) ?? throw Wrong(part, line, column.Name, ShopFileFault.NoFile),
        ("TEXT", "") when column.NotNull => "",
        (_, "") => DBNull.Value,
        ("INTEGER", _) => long.TryParse(cell, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var whole) ? whole : throw Wrong(part, line, column.Name, ShopFileFault.NoNumber),
        ("REAL", _) => double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : throw Wrong(part, line, column.Name, ShopFileFault.NoNumber),
        ("BLOB", _) => Bytes(cell) ?? throw Wrong(part, line, column.Name, ShopFileFault.NoBytes),
        _ => cell,
    };

    private static byte[]? Bytes(string cell)
    {
        var bytes = new byte[cell.Length];
        return Convert.TryFromBase64String(cell, bytes, out var count) ? bytes[..count] : null;
    }

    private static DoesNotFitException Wrong(Part part, int line, string column, ShopFileFault why) => new(new ShopFileWrong(part.Table, line, column, why));
}
