using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;

namespace TagPage.Records.DueDates;

/// <summary>What a reading of a player's strings should say.</summary>
internal static class Expectation
{
    /// <param name="jobs">All of the player's strings.</param>
    /// <param name="job">The one that is measured, among them or not.</param>
    /// <param name="at">When, by days and hours.</param>
    /// <param name="values">The shop's.</param>
    public static ExpectedLoss Of(IReadOnlyList<JobHistory> jobs, JobHistory job, LossReading at, StartingValues values) => ExpectedLoss.Of(
        values.Tension.Of(job.Mains), values.Tension.Spread,
        Learned.From(jobs.Where(other => other.Id != job.Id), job.Mains).Beds,
        Learned.From(jobs.Where(own => own.Id == job.Id), job.Mains).Beds.SelectMany(bed => bed).ToList(),
        at.Days, at.Hours);
}
