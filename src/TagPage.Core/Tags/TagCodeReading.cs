namespace TagPage.Core.Tags;

/// <summary>What a typed text turned out to be.</summary>
public enum TagCodeOutcome
{
    /// <summary>A well-formed code; whether such a tag exists is another question.</summary>
    Code,

    /// <summary>Eleven valid characters that do not belong together: a typo; check the tag again.</summary>
    WrongCheckCharacter,

    /// <summary>Nothing like a code.</summary>
    NotACode,
}

/// <summary>The result of reading a typed or scanned text.</summary>
/// <param name="Outcome">What it was.</param>
/// <param name="Code">The code; null unless the outcome is <see cref="TagCodeOutcome.Code"/>.</param>
public readonly record struct TagCodeReading(TagCodeOutcome Outcome, TagCode? Code);
