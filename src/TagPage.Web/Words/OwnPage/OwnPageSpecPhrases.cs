namespace TagPage.Web.Words.OwnPage;

/// <summary>What a racket measures and what was added to it.</summary>
public sealed record OwnPageSpecPhrases
{
    public required string Received { get; init; }
    public required string Customised { get; init; }
    public required string Remeasured { get; init; }
    public required string Strung { get; init; }
    public required string Unstrung { get; init; }
    public required string AddedHeading { get; init; }
    public required string Added { get; init; }
    public required string Lead { get; init; }
    public required string Tungsten { get; init; }
    public required string Silicone { get; init; }
    public required string OtherMaterial { get; init; }
    public required string Since { get; init; }
    public required string TakenOff { get; init; }
    public required string LeadCaution { get; init; }
}
