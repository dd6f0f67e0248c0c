using SQLitePCL;

namespace TagPage.Records.Storage;

/// <summary>
/// SQLite counts the memory it takes, under one lock that all connections share: each allocation of one waits for the others'.
/// Nobody here asks for the count, and SQLite advises to leave it out (SQLITE_DEFAULT_MEMSTATUS, https://www.sqlite.org/compile.html).
/// </summary>
internal static class SqliteMemory
{
    private static readonly Lazy<int> Answer = new(TurnOff);

    /// <summary>To be called before the first connection: a SQLite that runs already goes on counting, which costs nothing but the waiting.</summary>
    public static void CountNothing() => _ = Answer.Value;

    private static int TurnOff()
    {
        Batteries_V2.Init();
        return raw.sqlite3_config(raw.SQLITE_CONFIG_MEMSTATUS, 0);
    }
}
