namespace TagPage.Core.EventDesk;

/// <summary>What is left of a technician's hours while a plan is made.</summary>
internal sealed class FreeTime(Technician technician, DateTime now)
{
    private readonly List<WorkTime> _free =
        [.. technician.Hours.Where(time => time.To > now).Select(time => time.From < now ? time with { From = now } : time)];

    public Technician Technician { get; } = technician;

    /// <summary>The first moment from which so much time is free in one piece.</summary>
    public DateTime? First(TimeSpan takes, DateTime? notBefore)
    {
        foreach (var time in _free)
        {
            var start = notBefore > time.From ? notBefore.Value : time.From;
            if (start + takes <= time.To)
                return start;
        }
        return null;
    }

    /// <summary>The time is no longer free; it may reach beyond the hours.</summary>
    public void Take(DateTime from, DateTime to)
    {
        for (var at = _free.Count - 1; at >= 0; at--)
        {
            var time = _free[at];
            if (time.To <= from || time.From >= to)
                continue;
            _free.RemoveAt(at);
            if (to < time.To)
                _free.Insert(at, time with { From = to });
            if (time.From < from)
                _free.Insert(at, time with { To = from });
        }
    }
}
