using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Players;
using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Records.Players;

/// <summary>What a player's own strings of one material have taught.</summary>
public sealed record LearnedRow(Material Material, LossModel Loss, IReadOnlyList<double> BrokeAfter, int CameOutWhole, double? BreaksBy)
{
    /// <summary>One row for each material that the player has had in the mains.</summary>
    public static IReadOnlyList<LearnedRow> Of(IReadOnlyList<JobHistory> jobs, Sport sport, Hitting hitting, StartingValues values) =>
        [.. jobs.Select(job => job.Mains).Distinct().Order().Select(material => Of(Learned.From(jobs, material), material, sport, hitting, values))];

    private static LearnedRow Of(Learned learned, Material material, Sport sport, Hitting hitting, StartingValues values) => new(
        material,
        LossModel.Of(values.Tension.Of(material), values.Tension.Spread, learned.Beds),
        learned.BrokeAfter,
        learned.CameOutAfter.Count,
        BreakageHours.Of(learned, material, sport, hitting, values));
}
