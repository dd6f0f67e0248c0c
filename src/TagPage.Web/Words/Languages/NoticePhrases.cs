namespace TagPage.Web.Words;

/// <summary>Emails about what a finder pressed or wrote.</summary>
public sealed record NoticePhrases
{
    public required string SubjectShown { get; init; }
    public required string SubjectFinder { get; init; }
    public required string Hello { get; init; }
    public required string Shown { get; init; }
    public required string AtDesk { get; init; }
    public required string HaveIt { get; init; }
    public required string StillThere { get; init; }
    public required string Message { get; init; }
    public required string Reach { get; init; }
    public required string Answer { get; init; }
    public required string NoMail { get; init; }
    public required string Care { get; init; }
    public required string Reply { get; init; }
    public required string Back { get; init; }
}
