namespace TagPage.Web.Words;

/// <summary>The shop's own page, around the owner's words.</summary>
public sealed record HomePhrases
{
    public required string Read { get; init; }
    public required string ForShop { get; init; }
    public required string NotSetUp { get; init; }
    public required string NotSetUpHint { get; init; }

    /// <summary>After weekdays.</summary>
    public required string Closed { get; init; }
    public required string ClosedDay { get; init; }
    public required string ClosedDays { get; init; }
}
