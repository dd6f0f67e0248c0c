namespace TagPage.Records.PlayTime;

/// <summary>Hours played as entered.</summary>
public sealed record HoursEntry
{
    public string FormKey { get; init; } = "";
    public DateOnly PlayedOn { get; init; }

    /// <summary>The last of several days; null for one.</summary>
    public DateOnly? LastDay { get; init; }

    /// <summary>Of all days together; 0 says that the racket was not played with.</summary>
    public decimal Hours { get; init; }
    public string? Note { get; init; }

    /// <summary>Most days that one note takes.</summary>
    public const int MostDays = 62;

    /// <summary>How many days; less than 1 where the last lies before the first.</summary>
    internal int Days => (LastDay ?? PlayedOn).DayNumber - PlayedOn.DayNumber + 1;
}
