using System.Globalization;
using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;

namespace TagPage.Records.Customising;

/// <summary>What to do to one frame so that it measures what is wanted: exactly, and in steps that can be cut and weighed.</summary>
public sealed record CustomPlan
{
    public required FrameOnFile Frame { get; init; }
    public required Wanted Wanted { get; init; }
    public required Plan Exact { get; init; }
    public required Plan Rounded { get; init; }
    public AddedMaterial Material { get; init; }

    /// <summary>Where not all can be reached: plans in which one figure alone gives way.</summary>
    public IReadOnlyList<(Figures GivesWay, Plan Plan)> Alternatives { get; init; } = [];

    /// <summary>Where nothing is to be done: whether some pieces would bring it nearer, but by too little for their mass; null for a frame of a set, which is judged as a whole.</summary>
    public bool? CouldBeNearer { get; init; }

    /// <summary>By how much the exact plan misses.</summary>
    public Miss Miss => Miss.Of(Exact.After, Wanted);

    public bool IsReached => Miss.BeyondRounding == Figures.None;

    /// <summary>By how much rounded pieces do.</summary>
    public Miss Misses => Miss.Of(Rounded.After, Wanted);

    /// <summary>Whether nobody could measure what the exact plan misses.</summary>
    public bool IsAsGoodAsReached(Tolerances tolerances) =>
        Math.Abs(Miss.MassG) <= tolerances.MassG && Math.Abs(Miss.BalanceMm) <= tolerances.LengthMm && Math.Abs(Miss.SwingWeight) <= tolerances.SwingWeight;

    /// <summary>Rules of its sport that the frame would leave.</summary>
    public IReadOnlyList<RuleBreak> Broken => Frame.Broken(Rounded.After.MassG, Frame.Present.Where(mass => !Removed.Contains((mass, mass.Grams))));

    /// <summary>Pieces to put on.</summary>
    public IReadOnlyList<(FramePlace Place, double Grams)> Added =>
        [.. Rounded.Frame.Places.Zip(Rounded.AddedG).Where(added => added.Second > 0)];

    /// <summary>Earlier pieces to take off, and how much of each.</summary>
    public IReadOnlyList<(AddedMassStore.Row Mass, double Grams)> Removed =>
        [.. Frame.Present.Zip(Rounded.RemovedG).Where(removed => removed.Second > 0)];

    /// <summary>Whether nothing is to be done: it measures what is wanted, or rounded pieces would bring it no nearer.</summary>
    public bool IsLeft => Added.Count + Removed.Count == 0;

    /// <summary>Whether anything is to be done before it is rounded; what weighs less than the last digits of a double is nothing.</summary>
    public bool IsPlanned => Exact.Masses.Any(mass => Math.Abs(mass.Grams) > 1e-6);

    /// <summary>Tells this plan from one made of another spec, other places or other settings.</summary>
    public string Mark => string.Create(CultureInfo.InvariantCulture,
        $"{Frame.Spec!.Id}.{Frame.Spec.Version} {string.Join(' ', Added.Select(a => $"{a.Place.AtCm}:{a.Grams}"))} {string.Join(' ', Removed.Select(r => $"-{r.Mass.Id}:{r.Grams}"))} {Material}");

    /// <summary>The figures before, with what measuring leaves open, and the estimate of strings where it is one.</summary>
    public MeasuredBody Before => IsOfEstimate ? Frame.StrungFigures : AsMeasured;

    /// <summary>The figures afterwards, with what instruments, pieces and places leave open.</summary>
    public MeasuredBody After(Tolerances tolerances) => Before.After(Rounded.Masses, tolerances);

    /// <summary>The same before anything is rounded.</summary>
    public MeasuredBody Planned(Tolerances tolerances) => Before.After(Exact.Masses, tolerances);

    public Uncertain TwistChange(Tolerances tolerances) => Measured.TwistChange(Rounded.Masses, tolerances);

    /// <summary>Points on a frame of its length: as measured, what went into balance and length both counts once.</summary>
    public Uncertain Points(MeasuredBody body, Tolerances tolerances) =>
        body == Frame.Figures.Measured && Frame.Figures.Points is { } points ? points : Measured.Points(body.BalanceCm, tolerances.Length(Frame.LengthCm));

    /// <summary>Whether strings that were not in it when it was measured are counted in.</summary>
    public bool IsOfEstimate => Frame.IsEstimated && Rounded.Frame.Now != Frame.Figures.Body;

    // Without strings where it was measured without.
    private MeasuredBody AsMeasured => Frame.Figures.Measured!.Value;

    public static CustomPlan Of(FrameOnFile frame, Wanted wanted, PlanLocks locks, AddedMaterial material, CustomisingValues values)
    {
        var plain = frame.ToPlan(frame.Figures.Body!.Value, locks);
        var plan = Of(frame, plain, wanted, material, values);
        return plan.IsReached ? plan : plan with { Alternatives = [.. OneGivesWay(plain, wanted)] };
    }

    /// <summary>For a frame by itself, as it is planned for.</summary>
    public static CustomPlan Of(FrameOnFile frame, PlanFrame plain, Wanted wanted, AddedMaterial material, CustomisingValues values)
    {
        var found = StepPlans.For([plain], wanted, values.StepG, values.Tolerances);
        return Of(frame, found.Exact[0], found.Stepped[0], wanted, material) with { CouldBeNearer = found.CouldBeNearer };
    }

    /// <summary>For a plan that was found elsewhere, as those of a set.</summary>
    public static CustomPlan Of(FrameOnFile frame, Plan exact, Plan rounded, Wanted wanted, AddedMaterial material) => new()
    {
        Frame = frame,
        Wanted = wanted,
        Exact = exact,
        Rounded = rounded,
        Material = material,
    };

    private static IEnumerable<(Figures, Plan)> OneGivesWay(PlanFrame frame, Wanted wanted)
    {
        foreach (var figure in new[] { Figures.Mass, Figures.Balance, Figures.SwingWeight })
        {
            if (Planner.IfOnly(figure, frame, wanted) is { } plan && Miss.Of(plan.After, wanted).Figures == figure)
                yield return (figure, plan);
        }
    }

    /// <param name="on">The shop's day.</param>
    /// <param name="tolerances">The shop's.</param>
    public CustomEntry ToEntry(DateOnly on, Tolerances tolerances) => new()
    {
        On = on,
        After = AsMeasured.After(Rounded.Masses, tolerances),
        SpecId = Frame.Spec!.Id,
        SpecVersion = Frame.Spec.Version,
        Material = Material,
        Added = Added,
        Removed = [.. Removed.Select(removed => (removed.Mass.Id, removed.Grams))],
    };
}
