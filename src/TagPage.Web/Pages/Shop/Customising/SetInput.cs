namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>What the form about a set asks for.</summary>
public sealed record SetInput : WantedInput
{
    /// <summary>The rackets of the set.</summary>
    public IList<long> Frames { get; init; } = [];

    /// <summary>The racket that the others are to be like; null for the least common target.</summary>
    public long? Like { get; init; }

    /// <summary>Whether a plan is asked for, and not only how far they are apart.</summary>
    public bool Match { get; init; }

    /// <summary>Whether one is asked for though the frames match already.</summary>
    public bool Anyway { get; init; }
}
