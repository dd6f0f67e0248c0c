namespace TagPage.Records.Import;

/// <summary>Something of a batch that the shop has already, so that the batch cannot be saved.</summary>
public abstract record ImportClash
{
    private ImportClash()
    {
    }

    public sealed record Ticket(JobRow Job) : ImportClash;

    public sealed record Tag(TagRow Row) : ImportClash;

    /// <summary>A string of this name and gauge in another material.</summary>
    public sealed record Material(StringRow Kind) : ImportClash;
}
