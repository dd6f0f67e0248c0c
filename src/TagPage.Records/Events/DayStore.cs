using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>What is left of an event: its rackets day by day, with what they cost. The shop's own.</summary>
public sealed class DayStore(Database database)
{
    /// <summary>All rackets of an event that came in or were strung on a day, or all of its days; null for everybody but the shop.</summary>
    public IReadOnlyList<EntryRow>? Get(Who who, long eventId, DateOnly? day) => database.Read(c =>
        who.IsOwner && EventStore.Get(c, who, eventId) is not null
            ? c.Query<EntryRow>(DaySql, new { eventId, Day = day?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) }).ToList()
            : null);

    private const string DaySql = EntryRow.Select + """
         WHERE e.event_id = @eventId AND (@Day IS NULL OR substr(e.came_at, 1, 10) = @Day OR substr(e.strung_at, 1, 10) = @Day)
        ORDER BY e.number
        """;
}
