using TagPage.Core.EventDesk;
using TagPage.Core.Sports;

namespace TagPage.Core.Tests.EventDesk;

/// <summary>An invented event whose times are written as minutes from its start at nine.</summary>
internal static class Court
{
    public static readonly DateTime Nine = new(2027, 5, 8, 9, 0, 0);

    public static DateTime At(int minutes) => Nine.AddMinutes(minutes);

    public static int Minute(DateTime time) => (int)(time - Nine).TotalMinutes;

    public static int? Minute(DateTime? time) => time is { } at ? Minute(at) : null;

    public static Technician Technician(long id, int hours = 48) => new(id, [new WorkTime(Nine, Nine.AddHours(hours))]);

    public static IReadOnlyList<Technician> Technicians(int count, int hours = 48) =>
        [.. Enumerable.Range(1, count).Select(id => Technician(id, hours))];

    public static DeskEntry Racket(int number, int minutes, int? due = null) =>
        new(number, Sport.Tennis) { Minutes = minutes, NeededBy = due is { } at ? At(at) : null };

    public static IReadOnlyList<DeskEntry> Rackets(params (int Minutes, int Due)[] jobs) =>
        [.. jobs.Select((job, at) => Racket(at + 1, job.Minutes, job.Due))];

    public static Desk Desk(int technicians, IReadOnlyList<DeskEntry> entries, int now = 0) =>
        new(At(now), Technicians(technicians), entries);

    public static int LargestLateness(this Desk desk) =>
        desk.Entries.Max(entry => Minute(desk.Plan.ReadyAt(entry.Number)!.Value) - Minute(entry.NeededBy!.Value));

    public static int Late(this Desk desk) => desk.Entries.Count(entry => desk.Plan.ReadyAt(entry.Number) > entry.NeededBy);
}
