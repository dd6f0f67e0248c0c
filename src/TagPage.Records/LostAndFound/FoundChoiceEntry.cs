using TagPage.Records.Clients;

namespace TagPage.Records.LostAndFound;

/// <summary>What finders get, as entered.</summary>
public sealed record FoundChoiceEntry
{
    public int Version { get; init; }
    public FoundChoice Choice { get; init; }

    /// <summary>Shown always, and not only while a racket is marked lost.</summary>
    public bool Always { get; init; }
    public bool ShowsMail { get; init; }
}
