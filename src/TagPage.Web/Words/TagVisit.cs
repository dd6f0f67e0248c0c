using TagPage.Core.Tags;

namespace TagPage.Web.Words;

public enum TagAnswer { NotACode, Mistyped, Unknown, Unassigned, Retired, Refused, Live }

/// <summary>What a code in an address opened.</summary>
/// <param name="Answer">How it went.</param>
/// <param name="Code">The code where the address holds one.</param>
/// <param name="RacketId">For the signed-in shop only, and only behind a live tag.</param>
/// <param name="Racket">For everybody, and only behind a live tag.</param>
public sealed record TagVisit(TagAnswer Answer, TagCode? Code = null, long? RacketId = null, TagView? Racket = null)
{
    /// <summary>How long a refused source has to wait.</summary>
    public TimeSpan Wait { get; init; }

    /// <summary>For a text that does not read as a code.</summary>
    public static TagAnswer Unread(TagCodeOutcome outcome) =>
        outcome == TagCodeOutcome.WrongCheckCharacter ? TagAnswer.Mistyped : TagAnswer.NotACode;
}
