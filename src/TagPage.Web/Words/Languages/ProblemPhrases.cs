namespace TagPage.Web.Words;

/// <summary>Pages for what went wrong.</summary>
public sealed record ProblemPhrases
{
    public required string Full { get; init; }
    public required string FullAdvice { get; init; }
    public required string TooOld { get; init; }
    public required string TooOldAdvice { get; init; }
    public required string Unread { get; init; }
    public required string UnreadAdvice { get; init; }
    public required string Absent { get; init; }
    public required string AbsentAdvice { get; init; }
    public required string TooMany { get; init; }
    public required string TooManyAdvice { get; init; }
    public required string Cannot { get; init; }
    public required string CannotAdvice { get; init; }
    public required string Broken { get; init; }
    public required string BrokenAdvice { get; init; }
    public required string ForLog { get; init; }
    public required string ToShop { get; init; }
}
