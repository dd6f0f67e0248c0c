using TagPage.Core.Tags;

namespace TagPage.Records.LostAndFound;

/// <summary>One press of a finder.</summary>
/// <param name="Code">Of the tag whose found page it came from.</param>
/// <param name="Kind">Which button.</param>
/// <param name="Source">The finder's mark, never an address.</param>
/// <param name="FormKey">Of the opened form, so that the same form sent again is the same press.</param>
/// <param name="At">When.</param>
public sealed record FinderPress(TagCode Code, FoundKind Kind, string Source, string FormKey, DateTimeOffset At)
{
    /// <summary>Characters of a message, of how the finder can be reached, and of where the racket is.</summary>
    public const int LongestMessage = 1000, LongestContact = 100, LongestPlace = 100;

    /// <summary>Of the page that was read; an answer to the finder is written in it.</summary>
    public string Language { get; init; } = "en";

    /// <summary>The finder's own words; of a ready-made answer which place it speaks of.</summary>
    public string Message { get; init; } = "";

    public string Contact { get; init; } = "";
}

/// <summary>What came of a press.</summary>
/// <param name="Result">How it went.</param>
/// <param name="Contact">Where it was asked for and may be shown.</param>
public sealed record FoundAnswer(FoundResult Result, FoundContact? Contact = null);

/// <summary>
/// ByShop: done, and it goes to the shop, since no email reaches whoever looks after the racket. Closed: the client agrees to nothing
/// but the shop's contact details, or no longer does.
/// </summary>
public enum FoundResult { Done, ByShop, Closed, TooMany }

public static class FoundResults
{
    /// <summary>The press counts, whoever hears of it.</summary>
    public static bool IsTaken(this FoundResult result) => result is FoundResult.Done or FoundResult.ByShop;
}

/// <summary>How to reach the person who looks after a racket, as far as that person agreed.</summary>
/// <param name="Phone">E.164.</param>
/// <param name="Mail">Only where showing it was agreed to as well.</param>
public sealed record FoundContact(string? Phone, string? Mail);
