using TagPage.Records.Clients;
using TagPage.Records.LostAndFound;

namespace TagPage.Web.Pages.Shop.Clients;

/// <summary>What the form about finders posts.</summary>
public sealed record FoundChoiceInput
{
    public int Version { get; init; }

    public FoundChoice Choice { get; init; }

    /// <summary>Shown always, and not only while a racket is marked lost.</summary>
    public bool Always { get; init; }

    public bool ShowsMail { get; init; }

    public FoundChoiceEntry ToEntry() => new()
    {
        Version = Version,
        Choice = Choice,
        Always = Always,
        ShowsMail = ShowsMail,
    };
}
