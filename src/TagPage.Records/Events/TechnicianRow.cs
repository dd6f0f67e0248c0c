using TagPage.Core.EventDesk;
using TagPage.Core.Sports;

namespace TagPage.Records.Events;

/// <summary>Somebody who strings at an event.</summary>
public sealed record TechnicianRow
{
    public long Id { get; init; }
    public string Name { get; init; } = "";
    public string Machine { get; init; } = "";

    /// <summary>The machine is broken, or they are not there.</summary>
    public bool Away { get; init; }

    /// <summary>When they string, breaks left out.</summary>
    public IReadOnlyList<WorkTime> Hours { get; init; } = [];

    /// <summary>Breaks that were taken at the desk, as they were to last or lasted.</summary>
    public IReadOnlyList<WorkTime> Breaks { get; init; } = [];

    /// <summary>Minutes a racket takes them, as learned from what was timed at all events.</summary>
    public IReadOnlyDictionary<Sport, int> Minutes { get; init; } = new Dictionary<Sport, int>();

    internal Technician ToTechnician() => new(Id, Away ? [] : Hours) { Minutes = Minutes };
}

/// <summary>A technician as entered.</summary>
public sealed record TechnicianEntry
{
    public string FormKey { get; init; } = "";
    public string Name { get; init; } = "";
    public string? Machine { get; init; }

    /// <summary>Of every day that has none of its own: 9:00-12:30, 13:00-18:00. What lies between is a break.</summary>
    public string? Hours { get; init; }

    /// <summary>Days on which they differ.</summary>
    public IReadOnlyList<DayHours> Days { get; init; } = [];
}

/// <summary>When somebody strings on one day.</summary>
/// <param name="Day">One of the event's; others do nothing.</param>
/// <param name="Hours">Empty for those of every day, <see cref="Off"/> for none.</param>
public sealed record DayHours(DateOnly Day, string? Hours)
{
    public const string Off = "off";
}
