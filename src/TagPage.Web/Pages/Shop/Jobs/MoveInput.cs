using TagPage.Records.Jobs;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What the form posts that gives a ticket to another racket.</summary>
public sealed record MoveInput
{
    public int Version { get; init; }

    /// <summary>What the form asked about and the owner confirmed.</summary>
    public string? Confirmed { get; init; }

    public MovedJobEntry ToEntry(long racket) => new() { Version = Version, RacketId = racket };
}
