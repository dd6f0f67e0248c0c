using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Search;

/// <summary>
/// Keeps beside each name of a client, player or payer the bytes that sort as it does, so that lists of any length are read from an
/// index, and in the search table its letters as any keyboard types them. A name without them is given them before its transaction
/// ends; a setting that moves the order, and a program that orders otherwise, makes all of them again.
/// </summary>
public sealed class NameKeeper(Database database)
{
    /// <summary>The tables, and what is added to four times the id to name a row of the search table; null for one that is not in it.</summary>
    private static readonly (string Table, int? InSearch)[] Kept = [("client", 0), ("player", 1), ("payer", null)];

    private sealed record Named
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
    }

    /// <summary>From here on every write keeps the keys.</summary>
    public void Attach()
    {
        database.BeforeCommit += Refresh;
        Begin();
    }

    /// <summary>Makes all keys again where this program orders otherwise than the one that made them.</summary>
    public void Begin()
    {
        if (database.Read(c => MadeBy(c) != NameOrder.Of(c).Identity))
            database.Write(c => c.Execute("INSERT INTO name_order (id, made_by) VALUES (1, '') ON CONFLICT (id) DO UPDATE SET made_by = ''"));
    }

    private static void Refresh(SqliteConnection connection)
    {
        if (!connection.ExecuteScalar<bool>(IsAnyMissingSql))
            return;
        var order = NameOrder.Of(connection);
        if (MadeBy(connection) != order.Identity)
            connection.Execute(BeginAnewSql, new { order.Identity });
        foreach (var (table, inSearch) in Kept)
            Refresh(connection, order, table, inSearch);
    }

    private static string? MadeBy(SqliteConnection connection) => connection.ExecuteScalar<string?>("SELECT made_by FROM name_order WHERE id = 1");

    private const string BeginAnewSql = """
        INSERT INTO name_order (id, made_by) VALUES (1, @Identity) ON CONFLICT (id) DO UPDATE SET made_by = excluded.made_by;
        UPDATE client SET name_key = NULL WHERE name_key IS NOT NULL;
        UPDATE player SET name_key = NULL WHERE name_key IS NOT NULL;
        UPDATE payer SET name_key = NULL WHERE name_key IS NOT NULL;
        """;

    private const string IsAnyMissingSql = """
        SELECT EXISTS (SELECT 1 FROM name_order WHERE made_by = '')
            OR EXISTS (SELECT 1 FROM client WHERE name_key IS NULL)
            OR EXISTS (SELECT 1 FROM player WHERE name_key IS NULL)
            OR EXISTS (SELECT 1 FROM payer WHERE name_key IS NULL)
        """;

    private static void Refresh(SqliteConnection connection, NameOrder order, string table, int? inSearch)
    {
        var names = connection.Query<Named>($"SELECT id, name FROM {table} WHERE name_key IS NULL").AsList();
        connection.Execute($"UPDATE {table} SET name_key = @Key WHERE id = @Id", names.Select(row => new { row.Id, Key = order.Key(row.Name) }));
        if (inSearch is { } place)
            connection.Execute("UPDATE search SET words = @Words WHERE rowid = @Row",
                names.Select(row => (row.Id, row.Name, Words: PlainLetters.Of(row.Name))).Where(row => row.Words != row.Name).Select(row => new { row.Words, Row = (4 * row.Id) + place }));
    }
}
