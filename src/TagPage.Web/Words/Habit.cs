namespace TagPage.Web.Words;

/// <summary>How much somebody plays, for private pages only.</summary>
public static class Habit
{
    public static string InWords(decimal timesAWeek, decimal hoursATime) => (timesAWeek, hoursATime) switch
    {
        (0, _) => "how often they play is not noted",
        (_, 0) => $"plays {AWeek(timesAWeek)}",
        _ => $"plays {AWeek(timesAWeek)}, {Formats.Number(hoursATime)} h a time",
    };

    private static string AWeek(decimal times) => times switch
    {
        1 => "once a week",
        2 => "twice a week",
        _ => $"{Formats.Number(times)} times a week",
    };
}
