namespace TagPage.Web.Words;

/// <summary>How much somebody plays, for private pages only.</summary>
public static class Habit
{
    public static string InWords(decimal timesAWeek, decimal hoursATime) => (timesAWeek, hoursATime) switch
    {
        (0, _) => "how often they play is not noted",
        (_, 0) => $"plays {Times(timesAWeek)} a week",
        _ => $"plays {Times(timesAWeek)} a week, {Formats.Number(hoursATime)} h a time",
    };

    private static string Times(decimal times) => times == 1 ? "1 time" : $"{Formats.Number(times)} times";
}
