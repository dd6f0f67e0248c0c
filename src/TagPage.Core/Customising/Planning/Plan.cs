namespace TagPage.Core.Customising.Planning;

/// <summary>What to add to one frame and what to take off.</summary>
/// <param name="Frame">For which.</param>
/// <param name="AddedG">Grams at each of its places, both sides of a pair together.</param>
/// <param name="RemovedG">Grams of each of what was added earlier.</param>
public sealed record Plan(PlanFrame Frame, IReadOnlyList<double> AddedG, IReadOnlyList<double> RemovedG)
{
    public double TotalG => AddedG.Sum();

    /// <summary>What the frame measures afterwards.</summary>
    public Body After => Frame.Now.With(Masses);

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
