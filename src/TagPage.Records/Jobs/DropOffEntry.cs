namespace TagPage.Records.Jobs;

/// <summary>Rackets that come in together, as entered.</summary>
public sealed record DropOffEntry
{
    public string FormKey { get; init; } = "";
    public DateOnly ReceivedOn { get; init; }

    /// <summary>Of announced tickets, those that were promised for a day already keep it.</summary>
    public DateOnly? PromisedFor { get; init; }
    public IReadOnlyList<DropOffLine> Lines { get; init; } = [];
}

/// <summary>One of the rackets.</summary>
public sealed record DropOffLine
{
    /// <summary>Where the form has it: the beginning of its fields' names.</summary>
    public string Place { get; init; } = "";
    public long RacketId { get; init; }

    /// <summary>Null for a racket whose ticket waits for it to be brought. Its days are those of the drop-off.</summary>
    public NewJobEntry? Job { get; init; }
}
