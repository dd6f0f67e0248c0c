namespace TagPage.Web.Words;

/// <summary>What is left of the strings, and the neutral words for what decided: the only ones a public page may show.</summary>
public sealed record LifePhrases
{
    public required string All { get; init; }
    public required string NearlyAll { get; init; }
    public required string ThreeQuarters { get; init; }
    public required string TwoThirds { get; init; }
    public required string Half { get; init; }
    public required string Third { get; init; }
    public required string Quarter { get; init; }
    public required string Tenth { get; init; }
    public required string HardlyAny { get; init; }
    public required string None { get; init; }
    public required string BecauseOfHours { get; init; }
    public required string BecauseOfTime { get; init; }
    public required string BecauseOfTension { get; init; }
    public required string BecauseOfBreakage { get; init; }
    public required string BecauseOfShop { get; init; }
    public required string Paused { get; init; }
}
