namespace TagPage.Core.Customising.Planning;

/// <summary>What to add to one frame and what to take off.</summary>
/// <param name="Frame">For which.</param>
/// <param name="AddedG">Grams at each of its places, both sides of a pair together.</param>
/// <param name="RemovedG">Grams of each of what was added earlier.</param>
public sealed record Plan(PlanFrame Frame, IReadOnlyList<double> AddedG, IReadOnlyList<double> RemovedG)
{
    // Grams that are the last digits of a double.
    private const double Nothing = 1e-6;

    public double TotalG => AddedG.Sum();

    /// <summary>What the frame measures afterwards.</summary>
    public Body After => Frame.Now.With(Masses);

    /// <summary>Whether these are the pieces of an exact plan, each rounded or a step further, and no others.</summary>
    /// <param name="exact">For the same frame.</param>
    /// <param name="stepG">Of each piece; a pair has two.</param>
    public bool IsRounded(Plan exact, double stepG)
    {
        var places = Frame.Places.Zip(AddedG, exact.AddedG).Select(p => (p.Second, p.Third, Step: p.First.Paired ? 2 * stepG : stepG));
        var pieces = RemovedG.Zip(exact.RemovedG).Select(p => (p.First, p.Second, Step: stepG));
        return places.Concat(pieces).All(p => p.Item2 <= Nothing ? p.Item1 == 0 : Math.Abs(p.Item1 - p.Item2) < 2 * p.Step);
    }

    /// <summary>By how much the twist weight changes, in kg·cm². The twist weight itself is not known.</summary>
    public double TwistChange => Masses.Sum(mass => mass.TwistChange);

    /// <summary>What changes, taken off below zero; nothing that stays as it is.</summary>
    public IReadOnlyList<AddedMass> Masses =>
    [
        .. Frame.Places.Zip(AddedG, (place, grams) => place.Carrying(grams))
            .Concat(Frame.Removable.Zip(RemovedG, (earlier, grams) => earlier with { Grams = -grams }))
            .Where(mass => mass.Grams != 0),
    ];
}
