using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.EventDesk;
using TagPage.Core.Jobs;
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
    /// <param name="connection">In its transaction.</param>
    /// <param name="who">Who works at the desk.</param>
    /// <param name="desk">Which.</param>
    /// <param name="now">The moment for which it is planned.</param>
    /// <param name="change">Makes the change, and tells what the answer is to carry.</param>
    /// <param name="promised">The number of a racket that is promised for another time by the change itself.</param>
    public static long Make(SqliteConnection connection, Who who, EventRow desk, DateTime now, Func<long> change, int? promised = null)
    {
        var before = DeskStore.Of(connection, desk, now);
        var id = change();
        var after = DeskStore.Of(connection, EventStore.Get(connection, who, desk.Id)!, now);
        var moved = before.Desk.Slips(after.Desk)
            .Where(slip => slip.After is not null && slip.Number != promised && before.Of(slip.Number)?.Promised is not null && after.Of(slip.Number) is { IsOpen: true }).ToList();
        connection.Execute(MoveSql, moved.Select(slip => new { desk.Id, slip.Number, Ready = Desk.Stepped(slip.After!.Value) }));
        if (after.ToTell.Any())
        {
            var board = moved.Count == 0 ? after : DeskStore.Of(connection, desk, now);
            Sooner(connection, desk, board, board.ToTell.Where(entry => entry.IsOpen).Select(entry => (entry, entry.MovedFrom)));
        }
        return id;
    }

    /// <summary>
    /// Moves the times of all that waits, and works its promises out anew: those that would be kept less well than before move, and
    /// none is left after its match, or after what was promised first, where that can be kept without hurting anybody.
    /// </summary>
    public static void Shift(SqliteConnection connection, EventRow desk, DateTime now, Action shift)
    {
        var before = DeskStore.Of(connection, desk, now);
        shift();
        var after = DeskStore.Of(connection, desk, now);
        connection.Execute(MoveSql, after.In(JobState.Waiting).Where(entry => Lateness(after, entry) > Lateness(before, before.Of(entry.Number)!))
            .Select(entry => new { desk.Id, entry.Number, Ready = Desk.Stepped(after.ReadyAt(entry)!.Value) }));
        var board = DeskStore.Of(connection, desk, now);
        Sooner(connection, desk, board, board.In(JobState.Waiting).OrderBy(entry => entry.NeededBy ?? entry.Promised)
            .SelectMany(entry => new[] { entry.NeededBy, entry.MovedFrom }.Order().Select(wish => (entry, wish))));
    }

    private static TimeSpan Lateness(DeskBoard board, EntryRow entry) =>
        board.ReadyAt(entry) > entry.Promised ? board.ReadyAt(entry)!.Value - entry.Promised!.Value : TimeSpan.Zero;

    private static void Sooner(SqliteConnection connection, EventRow desk, DeskBoard board, IEnumerable<(EntryRow Entry, DateTime? Wish)> wishes)
    {
        var plan = board.Desk;
        foreach (var (entry, wish) in wishes)
        {
            var sooner = board.ToDesk(entry) with { Promised = wish };
            if (!(wish < plan.Entries.First(other => other.Number == entry.Number).Promised)
                || !(plan.With(sooner).Plan.ReadyAt(entry.Number) <= wish) || plan.Slips(sooner).Count > 0)
                continue;
            connection.Execute(SoonerSql, new { desk.Id, entry.Number, wish });
            plan = plan.With(sooner);
        }
    }

    private const string SoonerSql = """
        UPDATE event_entry SET promised = @wish, moved_from = CASE WHEN moved_from < @wish THEN moved_from END WHERE event_id = @Id AND number = @Number
        """;

    private const string MoveSql = """
        UPDATE event_entry SET moved_from = COALESCE(moved_from, promised), promised = @Ready WHERE event_id = @Id AND number = @Number
        """;
}
