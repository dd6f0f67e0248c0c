using System.Globalization;

namespace TagPage.Web.Http.Forms;

/// <summary>A day as a date field of a browser sends and takes it, whatever it shows: year, month and day of ISO 8601.</summary>
public static class DayField
{
    private const string Format = "yyyy-MM-dd";

    public static string Of(DateOnly day) => day.ToString(Format, CultureInfo.InvariantCulture);

    /// <summary>Null for what is no such day.</summary>
    public static DateOnly? Read(string? sent) =>
        DateOnly.TryParseExact(sent, Format, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
}
