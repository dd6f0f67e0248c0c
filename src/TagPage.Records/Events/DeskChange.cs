using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.EventDesk;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>Changes at an event's desk: each in one transaction with the promises that it moves.</summary>
internal static class DeskChange
{
    /// <summary>A write that whoever works at the desk may make while the event is open.</summary>
    public static Outcome AtDesk(this Database database, Who who, long eventId, Func<SqliteConnection, EventRow, Outcome> work) => database.Write(c =>
        EventStore.Get(c, who, eventId) is not { } desk ? new Outcome.Absent()
        : !desk.IsOpen ? new Outcome.Refused(new EventIsClosed())
        : work(c, desk));

    /// <summary>
    /// Makes a change and moves the promises of those it makes late, or later; what was promised first stays with them until
    /// their owners are told. Until then it is promised again as soon as it can be kept without hurting anybody.
    /// </summary>
    public static long Make(SqliteConnection connection, Who who, EventRow desk, DateTime now, Func<long> change)
    {
        var before = DeskStore.Of(connection, desk, now);
        var id = change();
        var after = DeskStore.Of(connection, EventStore.Get(connection, who, desk.Id)!, now);
        var moved = before.Desk.Slips(after.Desk)
            .Where(slip => slip.After is not null && before.Of(slip.Number)?.Promised is not null && after.Of(slip.Number) is { IsOpen: true }).ToList();
        connection.Execute(MoveSql, moved.Select(slip => new { desk.Id, slip.Number, Ready = Desk.Stepped(slip.After!.Value) }));
        if (after.ToTell.Any())
            Restore(connection, desk, moved.Count == 0 ? after : DeskStore.Of(connection, desk, now));
        return id;
    }

    private static void Restore(SqliteConnection connection, EventRow desk, DeskBoard board)
    {
        var plan = board.Desk;
        foreach (var entry in board.ToTell.Where(entry => entry.IsOpen))
        {
            var asFirst = board.ToDesk(entry) with { Promised = entry.MovedFrom };
            if (!(plan.With(asFirst).Plan.ReadyAt(entry.Number) <= entry.MovedFrom) || plan.Slips(asFirst).Count > 0)
                continue;
            connection.Execute(RestoreSql, new { desk.Id, entry.Number });
            plan = plan.With(asFirst);
        }
    }

    private const string RestoreSql = """
        UPDATE event_entry SET promised = moved_from, moved_from = NULL WHERE event_id = @Id AND number = @Number
        """;

    private const string MoveSql = """
        UPDATE event_entry SET moved_from = COALESCE(moved_from, promised), promised = @Ready WHERE event_id = @Id AND number = @Number
        """;
}
