namespace TagPage.Web.Words;

/// <summary>Spans of time, and what is counted.</summary>
public sealed record TimePhrases
{
    public required string Today { get; init; }
    public required string Tomorrow { get; init; }
    public required string Yesterday { get; init; }
    public required string InDays { get; init; }
    public required string InWeeks { get; init; }
    public required string InMonths { get; init; }
    public required string InYears { get; init; }
    public required string DaysAgo { get; init; }
    public required string WeeksAgo { get; init; }
    public required string MonthsAgo { get; init; }
    public required string YearsAgo { get; init; }
    public required string Comma { get; init; }

    /// <summary>Between the last two of a list.</summary>
    public required string And { get; init; }
    public required Counted Days { get; init; }
    public required Counted Weeks { get; init; }
    public required Counted Times { get; init; }
    public required string TenYears { get; init; }
    public required string At { get; init; }
}
