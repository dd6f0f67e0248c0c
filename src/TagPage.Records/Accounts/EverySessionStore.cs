using Microsoft.Data.Sqlite;
using TagPage.Records.Events;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;

namespace TagPage.Records.Accounts;

/// <summary>All that is signed in, the shop's browsers, the clients' and the tablets of events.</summary>
public sealed class EverySessionStore(Database database)
{
    /// <summary>Signs every browser out.</summary>
    public void End() => database.Write(End);

    /// <summary>In the caller's transaction.</summary>
    internal static void End(SqliteConnection connection)
    {
        SessionStore.EndEverybodys(connection);
        OwnPageSessionStore.EndEverybodys(connection);
        EventSessionStore.EndEverybodys(connection);
    }
}
