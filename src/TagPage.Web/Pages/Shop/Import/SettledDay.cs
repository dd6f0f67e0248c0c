using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Import;

/// <summary>The day before which strung jobs count as collected and paid.</summary>
internal static class SettledDay
{
    public const string Hint = "Old lists often do not say what was collected and paid. Jobs strung before this day count as both, and the rest stay as the files say. Leave it empty to keep everything as the files say.";

    /// <summary>What is wrong with it; null for a day up to today and for none.</summary>
    public static string? Wrong(string? sent, DateOnly today) => sent switch
    {
        null => null,
        _ when DayField.Read(sent) is not { } day => "Enter a date as 2027-03-14 (year-month-day), or leave it empty.",
        _ when DayField.Read(sent) > today => $"This day is in the future; today is {Formats.Day(today)}. Enter an earlier day, or leave it empty.",
        _ => null,
    };
}
