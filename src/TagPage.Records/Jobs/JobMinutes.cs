using TagPage.Core.EventDesk;
using TagPage.Core.Jobs;
using TagPage.Core.Sports;

namespace TagPage.Records.Jobs;

/// <summary>Minutes that a racket takes at this bench, by kind of job: the sport, and whether mains and crosses are two strings.</summary>
public sealed record JobMinutes(IReadOnlyDictionary<(Sport Sport, bool IsHybrid), int> Learned)
{
    /// <summary>Nobody times a visit: most take minutes.</summary>
    public int Of(JobRow job) => job.IsVisit ? LearnedMinutes.Shortest : Learned.GetValueOrDefault((job.Sport, job.IsHybrid), LearnedMinutes.Start);

    /// <summary>What is still to be done on it; on the machine longer than usual, it is about to come off, and begun later than now, the clock was set back.</summary>
    public int Left(JobRow job, DateTimeOffset now) => job is { State: JobState.OnMachine, StartedAt: { } started }
        ? Math.Max(LearnedMinutes.Shortest, Of(job) - (int)Math.Max(0, (now - started).TotalMinutes))
        : Of(job);
}
