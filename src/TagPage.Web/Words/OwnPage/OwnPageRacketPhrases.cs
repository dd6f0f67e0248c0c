namespace TagPage.Web.Words.OwnPage;

/// <summary>A racket in the own page: how it is used, where it is, how its strings feel.</summary>
public sealed record OwnPageRacketPhrases
{
    public required string InTurn { get; init; }
    public required string Spare { get; init; }
    public required string Resting { get; init; }
    public required string Damaged { get; init; }
    public required string Sold { get; init; }
    public required string Gone { get; init; }
    public required string RoleHeading { get; init; }
    public required string RoleText { get; init; }
    public required string RoleSaved { get; init; }
    public required string RoleMissing { get; init; }
    public required string LabelSays { get; init; }
    public required string JobExpected { get; init; }

    /// <summary>With {stop}.</summary>
    public required string JobExpectedAt { get; init; }
    public required string JobWaiting { get; init; }
    public required string JobOnMachine { get; init; }
    public required string JobReady { get; init; }
    public required string Price { get; init; }
    public required string Promised { get; init; }
    public required string Needed { get; init; }
    public required string DropOff { get; init; }
    public required string CollectAt { get; init; }
    public required string NotThereYet { get; init; }
    public required string Wish { get; init; }
    public required string Cancel { get; init; }
    public required string Order { get; init; }
    public required string FeelLink { get; init; }
    public required string FeltSaid { get; init; }
    public required string FeelHeading { get; init; }
    public required string FeelText { get; init; }
    public required string FeelBed { get; init; }
    public required string TooStiff { get; init; }
    public required string Right { get; init; }
    public required string TooLoose { get; init; }
    public required string FeelMore { get; init; }
    public required string MoreSpin { get; init; }
    public required string MoreControl { get; init; }
    public required string MoreComfort { get; init; }
    public required string FeelNote { get; init; }
    public required string FeelSend { get; init; }
    public required string FeelMissing { get; init; }
    public required string FeelSaved { get; init; }
}
