using TagPage.Core.Customising;

namespace TagPage.Records.Customising;

/// <summary>What a plan must keep to.</summary>
public sealed record PlanLocks
{
    public bool OnlyHandle { get; init; }

    /// <summary>Places to leave out, by where they stand in the frame's list.</summary>
    public IReadOnlyCollection<int> LeftOut { get; init; } = [];

    /// <summary>Grams at most at places of these names, both sides of a pair together; the others keep to their own limit.</summary>
    public IReadOnlyDictionary<string, double> MostG { get; init; } = new Dictionary<string, double>();

    /// <summary>Whether what was added earlier may come off.</summary>
    public bool TakeOff { get; init; }

    public FramePlace Limited(FramePlace place) => MostG.TryGetValue(place.Name, out var most) ? place with { MostG = most } : place;

    // No mass belongs on strings: such a place only says what was put there.
    public bool Allow(IReadOnlyList<FramePlace> places, FramePlace place) =>
        (!OnlyHandle || place.InHandle) && !place.OnStrings && !LeftOut.Any(i => i >= 0 && i < places.Count && places[i] == place);
}
