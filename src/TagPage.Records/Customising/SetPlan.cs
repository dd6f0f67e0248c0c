using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;

namespace TagPage.Records.Customising;

/// <summary>What to do to a player's frames so that they measure the same, all as if they had strings in them.</summary>
public sealed record SetPlan
{
    public required IReadOnlyList<CustomPlan> Plans { get; init; }

    /// <summary>What they are brought to.</summary>
    public required Body Target { get; init; }

    /// <summary>By how much that misses what is given of it; see <see cref="IsCommon"/>.</summary>
    public Miss Miss { get; init; }

    public bool IsReached => Plans.All(plan => plan.IsReached);

    /// <summary>Whether all frames come to the target before anything is rounded, be it what is wanted or the nearest that they have in common.</summary>
    public bool IsCommon => Plans.All(plan => Miss.Of(plan.Exact.After, Wanted.Of(Target)).BeyondRounding == Figures.None);

    /// <summary>Whether nothing is to be done to any of them; see <see cref="CustomPlan.IsLeft"/>.</summary>
    public bool IsLeft => Plans.All(plan => plan.IsLeft);

    public double TotalG => Plans.Sum(plan => plan.Added.Sum(added => added.Grams));

    /// <param name="frames">Measured ones, one or more.</param>
    /// <param name="wanted">What is given of the target; the rest becomes the same with the least mass.</param>
    /// <param name="locks">For all of them.</param>
    /// <param name="material">What is added.</param>
    /// <param name="values">The shop's.</param>
    public static SetPlan Of(IReadOnlyList<FrameOnFile> frames, Wanted wanted, PlanLocks locks, AddedMaterial material, CustomisingValues values)
    {
        var (target, plans) = Planner.Common([.. frames.Select(frame => frame.ToPlan(frame.Strung!.Value, locks))], wanted);
        return Of(frames, plans, Rounding.Together(plans, wanted, values.StepG), target, wanted, material);
    }

    /// <summary>The same for frames that are to be like another one, which stays as it is: each comes as near as it can.</summary>
    public static SetPlan Like(FrameOnFile other, IReadOnlyList<FrameOnFile> frames, PlanLocks locks, AddedMaterial material, CustomisingValues values)
    {
        var target = other.Strung!.Value;
        Plan[] plans = [.. frames.Select(frame => Planner.Nearest([frame.ToPlan(frame.Strung!.Value, locks)], Wanted.Of(target))[0])];
        return Of(frames, plans, Rounding.Like(target, plans, values.StepG), target, Wanted.Of(target), material);
    }

    private static SetPlan Of(IReadOnlyList<FrameOnFile> frames, IReadOnlyList<Plan> plans, IReadOnlyList<Plan> rounded, Body target, Wanted wanted, AddedMaterial material) => new()
    {
        Target = target,
        Miss = Miss.Of(target, wanted),
        Plans = [.. frames.Select((frame, i) => CustomPlan.Of(frame, plans[i], rounded[i], wanted.Or(target), material))],
    };
}
