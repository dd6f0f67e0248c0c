namespace TagPage.Records.Events;

/// <summary>An event as entered.</summary>
public sealed record EventEntry
{
    /// <summary>Days of the longest event that a form takes.</summary>
    public const int MostDays = 31;

    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public string? Place { get; init; }
    public DateOnly FromOn { get; init; }

    /// <summary>Null for one day.</summary>
    public DateOnly? ToOn { get; init; }
    public string? LabelTape { get; init; }

    /// <summary>In the shop's currency, 24.50.</summary>
    public decimal? PriceOwn { get; init; }
    public decimal? PriceDesk { get; init; }
}
