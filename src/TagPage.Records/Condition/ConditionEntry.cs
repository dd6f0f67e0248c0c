using TagPage.Core.Rackets;

namespace TagPage.Records.Condition;

/// <summary>What a racket looks like, as entered; null for a part that nobody looked at.</summary>
public sealed record ConditionEntry
{
    /// <summary>The most characters of what is said about a part.</summary>
    public const int MostWords = 120;

    /// <summary>Of what is on file, 0 where nothing is.</summary>
    public int Version { get; init; }
    public PartState? Frame { get; init; }
    public string? FrameWords { get; init; }
    public PartState? Grommets { get; init; }
    public string? GrommetsWords { get; init; }
    public PartState? Bumper { get; init; }
    public string? BumperWords { get; init; }
    public PartState? Grip { get; init; }
    public string? GripWords { get; init; }

    public bool IsEmpty => this is
    {
        Frame: null, Grommets: null, Bumper: null, Grip: null,
        FrameWords: null or "", GrommetsWords: null or "", BumperWords: null or "", GripWords: null or "",
    };
}
