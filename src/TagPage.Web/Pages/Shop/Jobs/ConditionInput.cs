using System.ComponentModel.DataAnnotations;
using TagPage.Core.Rackets;
using TagPage.Records.Condition;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What is noted of a racket as it comes in, and photos of it.</summary>
public sealed record ConditionInput
{
    private const string TooLong = "Keep this within 120 characters.";

    public int Version { get; init; }

    public PartState? Frame { get; init; }

    [StringLength(ConditionEntry.MostWords, ErrorMessage = TooLong)]
    public string? FrameWords { get; init; }

    public PartState? Grommets { get; init; }

    [StringLength(ConditionEntry.MostWords, ErrorMessage = TooLong)]
    public string? GrommetsWords { get; init; }

    public PartState? Bumper { get; init; }

    [StringLength(ConditionEntry.MostWords, ErrorMessage = TooLong)]
    public string? BumperWords { get; init; }

    public PartState? Grip { get; init; }

    [StringLength(ConditionEntry.MostWords, ErrorMessage = TooLong)]
    public string? GripWords { get; init; }

    /// <summary>Taken with the phone’s camera just now.</summary>
    public IFormFile? Camera { get; init; }

    public List<IFormFile> Photos { get; init; } = [];

    /// <summary>Of photos that were sent with this form before.</summary>
    public string? PhotosKey { get; init; }

    // No property, which would be bound, too, and emptied.
    public IReadOnlyList<IFormFile> Files() => Camera is null ? Photos : [Camera, .. Photos];

    public static ConditionInput Of(ConditionRow row) => new()
    {
        Version = row.Version,
        Frame = row.Frame,
        FrameWords = row.FrameWords,
        Grommets = row.Grommets,
        GrommetsWords = row.GrommetsWords,
        Bumper = row.Bumper,
        BumperWords = row.BumperWords,
        Grip = row.Grip,
        GripWords = row.GripWords,
    };

    public ConditionEntry ToEntry() => new()
    {
        Version = Version,
        Frame = Frame,
        FrameWords = FrameWords,
        Grommets = Grommets,
        GrommetsWords = GrommetsWords,
        Bumper = Bumper,
        BumperWords = BumperWords,
        Grip = Grip,
        GripWords = GripWords,
    };
}
