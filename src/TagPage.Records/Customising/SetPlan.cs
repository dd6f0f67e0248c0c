using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;

namespace TagPage.Records.Customising;

/// <summary>What to do to a player's frames so that they measure the same, all as if they had strings in them.</summary>
public sealed record SetPlan
{
    public required IReadOnlyList<CustomPlan> Plans { get; init; }

    /// <summary>What was given, or the figures of the frame that the others are to be like.</summary>
    public required Wanted Wanted { get; init; }

    /// <summary>What all of them come to before anything is rounded; null where that is not the same.</summary>
    public Body? Common { get; init; }

    /// <summary>Where nothing is to be done: whether some pieces would bring them nearer to something.</summary>
    public bool CouldBeNearer { get; init; }

    /// <summary>By how much what they have in common misses what is wanted.</summary>
    public Miss Miss => Common is { } common ? Miss.Of(common, Wanted) : default;

    /// <summary>Whether all become the same, and what is wanted.</summary>
    public bool IsReached => Common is not null && Miss.BeyondRounding == Figures.None;

    /// <summary>Whether each comes to what is wanted before anything is rounded, though they may not become the same.</summary>
    public bool IsWantedReached => Wanted != new Wanted() && Plans.All(plan => plan.IsReached);

    /// <summary>What they are brought to, as far as that is the same.</summary>
    public Wanted Goal => Common is { } common ? Wanted.Of(common) : Wanted;

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
        var found = StepPlans.For([.. frames.Select(frame => Plain(frame, locks))], wanted, values.StepG, values.Tolerances);
        return new()
        {
            Plans = [.. frames.Select((frame, i) => CustomPlan.Of(frame, found.Exact[i], found.Stepped[i], wanted, material))],
            Wanted = wanted,
            Common = found.Common,
            CouldBeNearer = found.CouldBeNearer,
        };
    }

    /// <summary>The same for frames that are to be like another one, which stays as it is: each comes as near as it can.</summary>
    public static SetPlan Like(FrameOnFile other, IReadOnlyList<FrameOnFile> frames, PlanLocks locks, AddedMaterial material, CustomisingValues values)
    {
        var wanted = Wanted.Of(other.Strung!.Value);
        CustomPlan[] plans = [.. frames.Select(frame => CustomPlan.Of(frame, Plain(frame, locks), wanted, material, values))];
        return new()
        {
            Plans = plans,
            Wanted = wanted,
            Common = plans.All(plan => plan.IsReached) ? other.Strung : null,
            CouldBeNearer = plans.Any(plan => plan.CouldBeNearer is true),
        };
    }

    private static PlanFrame Plain(FrameOnFile frame, PlanLocks locks) => frame.ToPlan(frame.Strung!.Value, locks);
}
