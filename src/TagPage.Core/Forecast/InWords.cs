namespace TagPage.Core.Forecast;

/// <summary>Spans of time and what is left of them, said as a person would.</summary>
public static class InWords
{
    private const int LastCountedInDays = 20;
    private const int LastCountedInWeeks = 83;
    private const int LastCountedInMonths = 729;

    private static readonly (double Share, string Words)[] Shares =
    [
        (0.03, "hardly any left"),
        (0.1, "about a tenth left"),
        (0.25, "about a quarter left"),
        (1.0 / 3, "about a third left"),
        (0.5, "about half left"),
        (2.0 / 3, "about two thirds left"),
        (0.75, "about three quarters left"),
        (0.95, "nearly all left"),
    ];

    /// <summary>Where a day lies from today: "today", "tomorrow", "in 12 days", "in 3 weeks", "9 days ago".</summary>
    /// <param name="daysLeft">Days from today, negative for the past.</param>
    public static string When(int daysLeft) => daysLeft switch
    {
        0 => "today",
        1 => "tomorrow",
        -1 => "yesterday",
        > 0 => $"in {Span(daysLeft)}",
        _ => $"{Span(-(long)daysLeft)} ago",
    };

    /// <summary>What is left of the string life, to the nearest common fraction: "about a third left".</summary>
    /// <param name="lifeLeft">0 to 1; what lies outside counts as the nearer end.</param>
    public static string Left(double lifeLeft) => lifeLeft switch
    {
        >= 1 => "all left",
        > 0 => Shares.MinBy(share => Math.Abs(share.Share - lifeLeft)).Words,
        _ => "none left",
    };

    private static string Span(long days) => days switch
    {
        <= LastCountedInDays => $"{days} days",
        <= LastCountedInWeeks => $"{Math.Round(days / 7.0)} weeks",
        <= LastCountedInMonths => $"{Math.Round(days / (365.25 / 12))} months",
        _ => $"{Math.Round(days / 365.25)} years",
    };
}
