namespace TagPage.Records.Accounts;

/// <summary>A browser that several people share; they change over by PIN.</summary>
public sealed record TabletRow
{
    public long Id { get; init; }

    /// <summary>What the owner calls it.</summary>
    public string Name { get; init; } = "";

    public DateTimeOffset MadeAt { get; init; }
}
