namespace TagPage.Records.Condition;

/// <summary>A photo on file, without its bytes.</summary>
public sealed record PhotoRow
{
    public long Id { get; init; }
    public long JobId { get; init; }
    public long Ticket { get; init; }
    public DateTimeOffset MadeAt { get; init; }
    public int Width { get; init; }
    public int Height { get; init; }
}

/// <summary>A photo as it was redrawn: JPEG, with nothing of the file that was sent but what is to be seen.</summary>
public sealed record PhotoEntry
{
    public int Width { get; init; }
    public int Height { get; init; }
    public byte[] Picture { get; init; } = [];
    public byte[] Small { get; init; } = [];
}
