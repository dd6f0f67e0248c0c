using TagPage.Core.Strings;

namespace TagPage.Core.Forecast.Learning;

/// <summary>What a player's earlier strings of one main-string material have taught.</summary>
public sealed record Learned
{
    /// <summary>Nothing so far.</summary>
    public static Learned Nothing { get; } = new();

    /// <summary>Losses of tension that were measured, bed by bed.</summary>
    public IReadOnlyList<IReadOnlyList<LossReading>> Beds { get; init; } = [];

    /// <summary>Hours after which beds broke by wear.</summary>
    public IReadOnlyList<double> BrokeAfter { get; init; } = [];

    /// <summary>Hours after which beds came out unbroken, or broke for another cause.</summary>
    public IReadOnlyList<double> CameOutAfter { get; init; } = [];

    /// <summary>From all of a player's jobs; only those with this material in the mains count.</summary>
    public static Learned From(IEnumerable<JobHistory> jobs, Material mains)
    {
        var same = jobs.Where(job => job.Mains == mains).ToList();
        return new Learned
        {
            Beds = [.. same.Select(job => job.Losses.ToList()).Where(losses => losses.Count > 0)],
            BrokeAfter = [.. same.Where(job => job.BrokeByWear).Select(job => job.Hours!.Value)],
            CameOutAfter = [.. same.Where(job => job.CameOutOtherwise).Select(job => job.Hours!.Value)],
        };
    }
}
