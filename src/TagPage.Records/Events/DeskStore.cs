using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>Reads an event's desk whole.</summary>
public sealed class DeskStore(Database database, ShopClock clock)
{
    /// <summary>For whoever works there; null for everybody else.</summary>
    public DeskBoard? Get(Who who, long eventId) => database.Read(c => EventStore.Get(c, who, eventId) is { } desk ? Of(c, desk, clock.Minute) : null);

    internal static DeskBoard Of(SqliteConnection connection, EventRow desk, DateTime now) =>
        new(desk, TechnicianStore.Of(connection, desk.Id), connection.Query<EntryRow>(EntriesSql, new { desk.Id }).ToList(), now);

    private const string EntriesSql = EntryRow.Select + " WHERE e.event_id = @Id ORDER BY e.number";
}
