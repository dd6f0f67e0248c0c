namespace TagPage.Core.Customising.Planning;

/// <summary>Finds the masses that bring frames to what is wanted, with as little added mass as possible.</summary>
public static class Planner
{
    /// <summary>The plan for each frame. What cannot be reached is missed by as little as possible; see <see cref="Miss"/>.</summary>
    /// <param name="frames">One or more. Of several, figures that are not wanted become the same on all.</param>
    /// <param name="wanted">What they should measure.</param>
    public static IReadOnlyList<Plan> Nearest(IReadOnlyList<PlanFrame> frames, Wanted wanted) =>
        Find(frames, wanted, Figures.All) ?? throw new InvalidOperationException("With everything allowed to give way there is always a plan.");

    /// <summary>The plan in which only these figures give way; null where the others cannot be reached even so.</summary>
    public static Plan? IfOnly(Figures giveWay, PlanFrame frame, Wanted wanted) => Find([frame], wanted, giveWay)?[0];

    private static IReadOnlyList<Plan>? Find(IReadOnlyList<PlanFrame> frames, Wanted wanted, Figures mayGive) =>
        new PlanProgramme(frames, wanted, mayGive).Solve() is { } grams
            ? [.. frames.Zip(grams, (frame, of) => new Plan(frame, of.Added, of.Removed))]
            : null;
}
