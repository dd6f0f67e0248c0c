using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>Remembers every address that was set, because labels in use may carry it.</summary>
public sealed class UsedAddressStore(Database database, TimeProvider clock)
{
    public sealed record Row
    {
        public string Base { get; init; } = "";

        /// <summary>The first and the last start with it.</summary>
        public DateTimeOffset FirstAt { get; init; }
        public DateTimeOffset LastAt { get; init; }
    }

    /// <summary>Notes that the shop was started with an address.</summary>
    /// <param name="address">Without a trailing slash.</param>
    public void Note(string address) => database.Write(c => Note(c, address, clock.GetUtcNow()));

    /// <summary>In the caller's transaction.</summary>
    internal static void Note(SqliteConnection connection, string address, DateTimeOffset now) => connection.Execute(NoteSql, new { Base = address, now });

    private const string NoteSql = """
        INSERT INTO used_address (base, first_at, last_at) VALUES (@Base, @now, @now)
        ON CONFLICT (base) DO UPDATE SET last_at = @now
        """;

    /// <summary>Those before the present one, the latest first.</summary>
    public IReadOnlyList<Row> EarlierThan(string address) => database.Read(c => c.Query<Row>(EarlierSql, new { Base = address }).AsList());

    private const string EarlierSql = "SELECT base, first_at, last_at FROM used_address WHERE base <> @Base ORDER BY last_at DESC, base";
}
