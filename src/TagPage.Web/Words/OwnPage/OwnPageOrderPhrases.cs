namespace TagPage.Web.Words.OwnPage;

/// <summary>Asking for a restring.</summary>
public sealed record OwnPageOrderPhrases
{
    public required string Heading { get; init; }
    public required string Last { get; init; }
    public required string Where { get; init; }
    public required string WhereHint { get; init; }
    public required string By { get; init; }
    public required string NeededBy { get; init; }
    public required string NeededByHint { get; init; }
    public required string Send { get; init; }
    public required string Sent { get; init; }
    public required string Cancelled { get; init; }
    public required string NotCancelled { get; init; }
    public required string TooLate { get; init; }
    public required string KindMissing { get; init; }
    public required string DayUnread { get; init; }
    public required string NeededTooEarly { get; init; }
    public required string AtShop { get; init; }
    public required string TooOften { get; init; }
    public required string NeverStrung { get; init; }
    public required string NotInPlay { get; init; }
}
