namespace TagPage.Core.Customising.Planning;

/// <summary>What to do to frames in pieces that can be cut and weighed.</summary>
/// <param name="Exact">Before anything is rounded, one plan a frame; where no rounded pieces follow from one, those that were found without it.</param>
/// <param name="Stepped">In steps; nothing where no pieces win what they have to.</param>
/// <param name="Common">What all of them come to before anything is rounded; null where that is not the same.</param>
/// <param name="CouldBeNearer">Whether some pieces would bring them nearer to something, though not by enough or not to all.</param>
public sealed record StepPlans(IReadOnlyList<Plan> Exact, IReadOnlyList<Plan> Stepped, Body? Common, bool CouldBeNearer)
{
    /// <summary>The best that was found for frames.</summary>
    /// <param name="frames">One, or a set that is to become the same.</param>
    /// <param name="wanted">What is given of the target.</param>
    /// <param name="stepG">Of each piece; a pair has two.</param>
    /// <param name="tolerances">What measuring cannot tell is hardly worth a piece.</param>
    public static StepPlans For(IReadOnlyList<PlanFrame> frames, Wanted wanted, double stepG, Tolerances tolerances) =>
        new StepSearch(frames, wanted, stepG, tolerances).Find();
}
