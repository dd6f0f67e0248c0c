namespace TagPage.Records.Import;

/// <summary>Something in a batch that the shop already has, so that the batch cannot be saved.</summary>
public abstract record ImportClash
{
    private ImportClash()
    {
    }

    public sealed record Ticket(JobRow Job) : ImportClash;

    public sealed record Tag(TagRow Row) : ImportClash;

    /// <summary>The racket has a live tag already.</summary>
    public sealed record LiveTag(TagRow Row) : ImportClash;

    /// <summary>The player has another racket of this number.</summary>
    public sealed record Number(RacketRow Racket) : ImportClash;

    /// <summary>A string of this name and gauge in another material.</summary>
    public sealed record Material(StringRow Kind) : ImportClash;
}
