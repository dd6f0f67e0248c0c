using System.Globalization;

namespace TagPage.Web.Http.Forms;

/// <summary>A time of day as people type it and as a browser's time field sends it: 14:30, 1430, 14.30 or 9.</summary>
public static class TimeField
{
    private static readonly string[] Formats = ["HH:mm", "H:mm", "HH.mm", "H.mm", "HHmm", "HH", "%H"];

    public const string Ask = "Enter a time like 14:30.";

    public static string Of(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Null for what is no such time.</summary>
    public static TimeOnly? Read(string? typed) =>
        TimeOnly.TryParseExact(typed?.Trim(), Formats, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? time : null;
}
