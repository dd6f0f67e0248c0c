using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;

namespace TagPage.Records.Customising;

/// <summary>What to do to a player's frames so that they measure the same, all as if they had strings in them.</summary>
public sealed record SetPlan
{
    public required IReadOnlyList<CustomPlan> Plans { get; init; }

    /// <summary>What they are brought to.</summary>
    public required Body Target { get; init; }

    public bool IsReached => Plans.All(plan => plan.IsReached);

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
        var plans = Planner.Nearest([.. frames.Select(frame => frame.ToPlan(frame.Strung!.Value, locks))], wanted);
        var rounded = Rounding.Together(plans, wanted, values.StepG);
        var common = wanted.Or(plans[0].After);
        return new SetPlan
        {
            Target = new Body(common.MassG!.Value, common.BalanceCm!.Value, common.SwingWeight!.Value),
            Plans = [.. frames.Select((frame, i) => CustomPlan.Of(frame, plans[i], rounded[i], common, material))],
        };
    }
}
