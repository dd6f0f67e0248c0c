namespace TagPage.Records.Shop;

/// <summary>The week's opening times as entered.</summary>
public sealed record OpeningEntry
{
    public int Version { get; init; }
    public IReadOnlyList<OpeningSpan> Week { get; init; } = [];
}

/// <summary>Closed days as entered.</summary>
public sealed record ClosedDaysEntry
{
    public string FormKey { get; init; } = "";
    public DateOnly FromOn { get; init; }

    /// <summary>Null for a single day.</summary>
    public DateOnly? ToOn { get; init; }
    public string? Note { get; init; }
}
