namespace TagPage.Core.Customising.Planning;

/// <summary>Finds the masses that bring frames to what is wanted, with as little added mass as possible.</summary>
public static class Planner
{
    /// <summary>The plan for each frame. What cannot be reached is missed by as little as possible; see <see cref="Miss"/>.</summary>
    /// <param name="frames">One or more. Several become the same, whatever is wanted.</param>
    /// <param name="wanted">What they should measure.</param>
    public static IReadOnlyList<Plan> Nearest(IReadOnlyList<PlanFrame> frames, Wanted wanted) => Common(frames, wanted).Plans;

    /// <summary>
    /// The same with what the frames come to in common: where not all that is wanted can be reached, the nearest that all can
    /// reach. Frames that cannot become the same are left as little apart from it as possible.
    /// </summary>
    public static (Body Target, IReadOnlyList<Plan> Plans) Common(IReadOnlyList<PlanFrame> frames, Wanted wanted) =>
        Find(frames, wanted, Figures.All, PlanOrder.Same) ?? Find(frames, wanted, Figures.All, PlanOrder.LeastApart)
        ?? throw new InvalidOperationException("With everything allowed to give way there is always a plan.");

    /// <summary>The same where what is wanted comes before being the same: a frame that cannot come along keeps no other back, and being the same has to be worth the grams.</summary>
    public static (Body Target, IReadOnlyList<Plan> Plans) WantedFirst(IReadOnlyList<PlanFrame> frames, Wanted wanted, double gram) =>
        Find(frames, wanted, Figures.None, PlanOrder.WantedFirst, gram) ?? throw new InvalidOperationException("Every figure may be missed: there is always a plan.");

    /// <summary>The same where each added gram has to bring the frames nearer to what is wanted or to each other by so much.</summary>
    public static (Body Target, IReadOnlyList<Plan> Plans) Weighed(IReadOnlyList<PlanFrame> frames, Wanted wanted, double gram) =>
        Find(frames, wanted, Figures.None, PlanOrder.Weighed, gram) ?? throw new InvalidOperationException("Every figure may be missed: there is always a plan.");

    /// <summary>The plan in which only these figures give way; null where the others cannot be reached even so.</summary>
    public static Plan? IfOnly(Figures giveWay, PlanFrame frame, Wanted wanted) => Find([frame], wanted, giveWay, PlanOrder.Same)?.Plans[0];

    private static (Body Target, IReadOnlyList<Plan> Plans)? Find(IReadOnlyList<PlanFrame> frames, Wanted wanted, Figures mayGive, PlanOrder order, double gram = 0) =>
        new PlanProgramme(frames, wanted, mayGive, order, gram).Solve() is var (target, grams)
            ? (target, [.. frames.Zip(grams, (frame, of) => new Plan(frame, of.Added, of.Removed))])
            : null;
}
