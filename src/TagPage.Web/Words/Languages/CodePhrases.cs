namespace TagPage.Web.Words;

/// <summary>The form for typing a code, and what is said about one that opens nothing.</summary>
public sealed record CodePhrases
{
    public required string EnterHeading { get; init; }
    public required string EnterHint { get; init; }
    public required string Label { get; init; }
    public required string Hint { get; init; }
    public required string Show { get; init; }
    public required string MistypedHeading { get; init; }
    public required string UnknownHeading { get; init; }
    public required string CameIn { get; init; }
    public required string Mistyped { get; init; }
    public required string NotACode { get; init; }
    public required string Unknown { get; init; }
}
