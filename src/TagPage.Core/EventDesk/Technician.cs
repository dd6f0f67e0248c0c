using TagPage.Core.Sports;

namespace TagPage.Core.EventDesk;

/// <summary>Somebody who strings at an event, at a machine of their own.</summary>
/// <param name="Id">Tells technicians apart; of two who would be done at the same time the first in the list takes the racket.</param>
/// <param name="Hours">When they string, breaks left out, in order and without overlap; see <see cref="WorkTime.Between"/>.</param>
public sealed record Technician(long Id, IReadOnlyList<WorkTime> Hours)
{
    /// <summary>Minutes a racket of a sport takes them; a missing one takes <see cref="LearnedMinutes.Start"/>.</summary>
    public IReadOnlyDictionary<Sport, int> Minutes { get; init; } = new Dictionary<Sport, int>();

    /// <summary>How long this racket takes this technician.</summary>
    public TimeSpan TimeFor(DeskEntry entry) =>
        TimeSpan.FromMinutes(entry.Minutes ?? Minutes.GetValueOrDefault(entry.Sport, LearnedMinutes.Start));

    /// <summary>
    /// When this racket comes off the machine it is on: a break of the day that begins meanwhile is waited for, also by one that
    /// takes longer than it should.
    /// </summary>
    /// <param name="entry">The racket.</param>
    /// <param name="now">It is not off before.</param>
    public DateTime Done(DeskEntry entry, DateTime now)
    {
        var since = entry.On!.Since;
        var done = since + TimeFor(entry);
        foreach (var (from, to) in Breaks.Where(pause => pause.From >= since))
        {
            if (from < done)
                done += to - from;
            else if (done < to && from <= now && now < to)
                done = to;
        }
        return done > now ? done : now;
    }

    private IEnumerable<WorkTime> Breaks => Hours.Zip(Hours.Skip(1), (one, next) => new WorkTime(one.To, next.From)).Where(pause => pause.From.Date == pause.To.Date);
}
