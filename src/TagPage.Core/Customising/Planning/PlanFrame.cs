namespace TagPage.Core.Customising.Planning;

/// <summary>A frame to plan for.</summary>
/// <param name="Now">As measured.</param>
/// <param name="Places">That may be used; a locked one is left out.</param>
public sealed record PlanFrame(Body Now, IReadOnlyList<FramePlace> Places)
{
    /// <summary>What was added earlier and may be taken off again, wholly or in part.</summary>
    public IReadOnlyList<AddedMass> Removable { get; init; } = [];
}
