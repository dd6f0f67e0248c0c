using Dapper;
using TagPage.Core.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>Moves all times of an event at once, as after rain.</summary>
public sealed class ShiftStore(Database database, ShopClock clock)
{
    /// <summary>Minutes that one shift may move times by.</summary>
    public const int Most = 24 * 60;

    /// <summary>Minutes beyond which a shift looks like a slip.</summary>
    private const int Usual = 3 * 60;

    /// <summary>
    /// Of all that is still to be strung: matches, promises, also those that were moved, and times not to be strung before.
    /// Technicians keep their hours. Promises are then worked out anew.
    /// </summary>
    public Outcome Shift(Who who, long eventId, int minutes) => database.AtDesk(who, eventId, (c, desk) =>
    {
        if (!IsPossible(minutes))
            return new Outcome.Refused(new ShiftUnlikely(Most));
        DeskChange.Shift(c, desk, clock.Minute, () => c.Execute(ShiftSql, new { eventId, By = $"{minutes} minutes" }));
        return new Outcome.Done(eventId);
    });

    private const string ShiftSql = """
        UPDATE event_entry
        SET needed_by = strftime('%Y-%m-%d %H:%M', needed_by, @By), not_before = strftime('%Y-%m-%d %H:%M', not_before, @By),
            promised = strftime('%Y-%m-%d %H:%M', promised, @By), moved_from = strftime('%Y-%m-%d %H:%M', moved_from, @By)
        WHERE event_id = @eventId AND job_id IN (SELECT id FROM job WHERE state = 'Waiting');
        UPDATE job SET version = version + 1 WHERE state = 'Waiting' AND id IN (SELECT job_id FROM event_entry WHERE event_id = @eventId);
        """;

    /// <summary>What is to be asked before all times are shifted.</summary>
    public static IReadOnlyList<Oddity> Oddities(DeskBoard board, int minutes)
    {
        if (!IsPossible(minutes))
            return [];
        List<int> past = [.. board.In(JobState.Waiting).Where(entry => entry.Promised >= board.Now && entry.Promised.Value.AddMinutes(minutes) < board.Now).Select(entry => entry.Number)];
        return
        [
            .. Math.Abs(minutes) > Usual ? (Oddity[])[new ShiftLong(minutes, Usual)] : [],
            .. past.Count > 0 ? (Oddity[])[new ShiftIntoPast(past)] : [],
        ];
    }

    private static bool IsPossible(int minutes) => minutes is not 0 and >= -Most and <= Most;
}
