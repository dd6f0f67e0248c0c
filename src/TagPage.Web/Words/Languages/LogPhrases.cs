namespace TagPage.Web.Words;

/// <summary>One line each for what finders have done.</summary>
public sealed record LogPhrases
{
    public required string Shown { get; init; }
    public required string AtDesk { get; init; }
    public required string HaveIt { get; init; }
    public required string StillThere { get; init; }
    public required string Message { get; init; }
}
