namespace TagPage.Records.DueDates;

/// <summary>A racket that is due by the date kept with it.</summary>
public sealed record KeptDue
{
    public long ClientId { get; init; }
    public string Player { get; init; } = "";

    /// <summary>The racket's number in the shop.</summary>
    public int Number { get; init; }

    public DateOnly DueOn { get; init; }
}
