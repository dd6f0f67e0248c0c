using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>Moves all times of an event at once, as after rain.</summary>
public sealed class ShiftStore(Database database)
{
    /// <summary>Minutes that one shift may move times by.</summary>
    public const int Most = 24 * 60;

    /// <summary>Of all that is still to be strung: matches, promises and times not to be strung before. Technicians keep their hours.</summary>
    public Outcome Shift(Who who, long eventId, int minutes) => database.AtDesk(who, eventId, (c, _) =>
    {
        if (minutes is 0 or < -Most or > Most)
            return new Outcome.Refused(new ShiftUnlikely(Most));
        c.Execute(ShiftSql, new { eventId, By = $"{minutes} minutes" });
        return new Outcome.Done(eventId);
    });

    private const string ShiftSql = """
        UPDATE event_entry
        SET needed_by = strftime('%Y-%m-%d %H:%M', needed_by, @By), promised = strftime('%Y-%m-%d %H:%M', promised, @By),
            not_before = strftime('%Y-%m-%d %H:%M', not_before, @By), moved_from = NULL
        WHERE event_id = @eventId AND job_id IN (SELECT id FROM job WHERE state = 'Waiting')
        """;
}
