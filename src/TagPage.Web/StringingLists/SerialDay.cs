using System.Globalization;
using System.Text.RegularExpressions;
using TagPage.Records.Shop;

namespace TagPage.Web.StringingLists;

/// <summary>From which day a spreadsheet counted its days, or that such numbers are none.</summary>
public enum DayCount { Since1900, Since1904, NoDays }

/// <summary>
/// Days that a spreadsheet gave away as it counts them: 45292 is 1 January 2024. ECMA-376, part 1, 18.17.4.1: 1 January 1900 is 1, and a
/// 29 February 1900 that never was is 60; or 1 January 1904 is 0.
/// </summary>
public static partial class SerialDay
{
    private static readonly DateOnly Since1900 = new(1899, 12, 30), Since1904 = new(1904, 1, 1);

    /// <summary>A number alone, as long as one that counts days or writes day, month and year.</summary>
    public static bool IsNumber(string text) => Number().IsMatch(text);

    /// <summary>What the number may mean; empty for what counts no day since 1970.</summary>
    /// <param name="text">A cell.</param>
    /// <param name="today">Days after it are no reading, unless there is no other.</param>
    public static IReadOnlyDictionary<DayCount, DateOnly> Read(string text, DateOnly today)
    {
        if (!Counted().IsMatch(text))
            return new Dictionary<DayCount, DateOnly>();
        var days = int.Parse(text[..5], CultureInfo.InvariantCulture);
        var found = new Dictionary<DayCount, DateOnly> { [DayCount.Since1900] = Since1900.AddDays(days), [DayCount.Since1904] = Since1904.AddDays(days) }
            .Where(pair => pair.Value >= ShopClock.Earliest).ToDictionary();
        var past = found.Where(pair => pair.Value <= today).ToDictionary();
        return past.Count > 0 ? past : found;
    }

    /// <summary>Whether it can be nothing but counted: 45292 is no 4 in a 52nd month, as 31224 may be 3 December 2024.</summary>
    public static bool IsCounted(string text) => Counted().IsMatch(text) && (text.Length > 5 || int.Parse(text[1..3], CultureInfo.InvariantCulture) is < 1 or > 12);

    [GeneratedRegex(@"^[0-9]{5}([.,][0-9]+)?$")]
    private static partial Regex Counted();

    [GeneratedRegex(@"^[0-9]{5,6}([.,][0-9]+)?$")]
    private static partial Regex Number();
}
