namespace TagPage.Web.Words.OwnPage;

/// <summary>The code that protects what could do harm.</summary>
public sealed record OwnPageCodePhrases
{
    public required string Heading { get; init; }
    public required string Text { get; init; }
    public required string NoMail { get; init; }
    public required string Send { get; init; }
    public required string SendAgain { get; init; }
    public required string Sent { get; init; }
    public required string Label { get; init; }
    public required string Hint { get; init; }
    public required string Go { get; init; }
    public required string Wrong { get; init; }
    public required string Over { get; init; }
    public required string Refused { get; init; }
    public required string TooMany { get; init; }
    public required string RanOut { get; init; }
    public required string GetOne { get; init; }
}
