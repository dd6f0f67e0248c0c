using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using TagPage.Records.Shop;

namespace TagPage.Web.StringingLists;

/// <summary>The order in which a list writes a day.</summary>
public enum DayOrder { DayMonthYear, MonthDayYear, YearMonthDay }

/// <summary>All days that a text may mean.</summary>
/// <param name="ByOrder">By the order it is read in.</param>
/// <param name="IsEvidence">Whether it tells in what order the list writes days: 13/01/2025 does, 2025-01-13 and 13 January do not.</param>
public sealed record DayReading(IReadOnlyDictionary<DayOrder, DateOnly> ByOrder, bool IsEvidence)
{
    /// <summary>The day, where all orders lead to one; null where it has to be known in which it is written.</summary>
    public DateOnly? Clear => ByOrder.Values.Distinct().ToList() is [var only] ? only : null;
}

/// <summary>
/// Reads days as lists write them. Between dots the day stands first: no locale of the Unicode CLDR has a short date of numbers with
/// dots whose month comes first. Beside a month's name the year comes last or has four digits (common practice).
/// </summary>
public static partial class DayText
{
    private static readonly string[] Languages = ["en", "es", "fr", "de", "it", "pt", "ja", "zh"];

    private static readonly Dictionary<string, int> Months = MonthNames();

    private static readonly HashSet<string> Fillers = new(StringComparer.Ordinal) { "de", "del", "of", "the", "le", "den", "st", "nd", "rd", "th", "er", "º", "o" };

    /// <summary>Null for what is no day in any order.</summary>
    /// <param name="text">A cell.</param>
    /// <param name="today">Days after it are no reading, unless there is no other; null for none.</param>
    public static DayReading? Read(string text, DateOnly? today = null)
    {
        if (text.Length is < 6 or > 60)
            return null;
        var plain = Time().Replace(text.Normalize(NormalizationForm.FormKC).Trim(), "");
        var parts = Part().Matches(plain).Select(m => m.Value).ToList();
        if (!Shape().IsMatch(plain) || parts.Count > 8)
            return null;
        var (words, numbers) = (parts.Where(p => !char.IsAsciiDigit(p[0])).Select(Plain).ToList(), parts.Where(p => char.IsAsciiDigit(p[0])).ToList());
        var month = words.Where(Months.ContainsKey).Select(w => Months[w]).Distinct().ToList();
        var found = words.Any(w => !IsKnown(w)) || month.Count > 1 ? []
            : month is [var named] ? Named(numbers, named, today)
            : Numeric(plain, numbers, today);
        return found.Count == 0 ? null : Past(found, today, isEvidence: month.Count == 0 && numbers is [{ Length: < 3 }, ..] && !plain.Contains('.', StringComparison.Ordinal));
    }

    private static DayReading Past(Dictionary<DayOrder, DateOnly> found, DateOnly? today, bool isEvidence)
    {
        var past = found.Where(pair => today is null || pair.Value <= today).ToDictionary();
        return new DayReading(past.Count > 0 ? past : found, isEvidence);
    }

    private static Dictionary<DayOrder, DateOnly> Named(List<string> numbers, int month, DateOnly? today)
    {
        if (numbers is not [var one, var other])
            return [];
        var (year, day) = one.Length == 4 ? (one, other) : (other, one);
        return Of((DayOrder.DayMonthYear, year, month.ToString(CultureInfo.InvariantCulture), day), today);
    }

    private static Dictionary<DayOrder, DateOnly> Numeric(string plain, List<string> numbers, DateOnly? today) => numbers switch
    {
        [{ Length: 8 } all] when plain == all => Of((DayOrder.YearMonthDay, all[..4], all[4..6], all[6..]), today),
        [{ Length: 4 } year, var month, var day] => Of((DayOrder.YearMonthDay, year, month, day), today),
        [var a, var b, { Length: 4 } year] => plain.Contains('.', StringComparison.Ordinal)
            ? Of((DayOrder.DayMonthYear, year, b, a), today)
            : Of((DayOrder.DayMonthYear, year, b, a), today, (DayOrder.MonthDayYear, year, a, b)),
        [{ Length: <= 2 } a, { Length: <= 2 } b, { Length: 2 } c] => plain.Contains('.', StringComparison.Ordinal)
            ? Of((DayOrder.DayMonthYear, c, b, a), today)
            : Of((DayOrder.DayMonthYear, c, b, a), today, (DayOrder.MonthDayYear, c, a, b), (DayOrder.YearMonthDay, a, b, c)),
        _ => [],
    };

    private static Dictionary<DayOrder, DateOnly> Of((DayOrder, string, string, string) first, DateOnly? today, params (DayOrder, string, string, string)[] others)
    {
        var found = new Dictionary<DayOrder, DateOnly>();
        foreach (var (order, year, month, day) in others.Prepend(first))
            if (Day(year, month, day, today) is { } read)
                found[order] = read;
        return found;
    }

    /// <summary>Two digits are a year of this century, or of the last where that is still to come.</summary>
    private static DateOnly? Day(string year, string month, string day, DateOnly? today)
    {
        if (year.Length is not (2 or 4) || month.Length > 2 || day.Length > 2)
            return null;
        var (y, m, d) = (int.Parse(year, CultureInfo.InvariantCulture), int.Parse(month, CultureInfo.InvariantCulture), int.Parse(day, CultureInfo.InvariantCulture));
        if (year.Length == 2)
            y += y <= (today?.Year ?? 2099) % 100 ? 2000 : 1900;
        return y >= ShopClock.Earliest.Year && y <= 2199 && m is >= 1 and <= 12 && d >= 1 && d <= DateTime.DaysInMonth(y, m) ? new DateOnly(y, m, d) : null;
    }

    private static bool IsKnown(string word) => Months.ContainsKey(word) || Fillers.Contains(word) || word is "年" or "月" or "日" || WeekDays.Contains(word);

    private static readonly HashSet<string> WeekDays = [.. Languages.Select(CultureInfo.GetCultureInfo).SelectMany(c => c.DateTimeFormat.DayNames.Concat(c.DateTimeFormat.AbbreviatedDayNames)).Select(Plain)];

    private static Dictionary<string, int> MonthNames()
    {
        var months = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var format in Languages.Select(l => CultureInfo.GetCultureInfo(l).DateTimeFormat))
            foreach (var names in new[] { format.MonthNames, format.AbbreviatedMonthNames, format.MonthGenitiveNames, format.AbbreviatedMonthGenitiveNames })
                for (var month = 1; month <= 12; month++)
                    if (Plain(names[month - 1]) is { Length: >= 3 } name && name.All(char.IsLetter))
                        months.TryAdd(name, month);
        foreach (var (name, month) in new[] { ("mrz", 3), ("sept", 9), ("mär", 3), ("juni", 6), ("juli", 7) })
            months.TryAdd(Plain(name), month);
        return months;
    }

    private static string Plain(string word) => string.Concat(word.Trim('.').ToLowerInvariant().Normalize(NormalizationForm.FormD).Where(c => CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark));

    [GeneratedRegex(@"[T,\s]\s*\d{1,2}[:h]\d{2}(:\d{2}([.,]\d+)?)?\s*([ap]\.?m\.?|Z|Uhr|h)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Time();

    [GeneratedRegex(@"[0-9]+|\p{L}[\p{L}\p{M}]*|º")]
    private static partial Regex Part();

    // Numbers and words with the usual marks between them, and nothing else.
    [GeneratedRegex(@"^[0-9\p{L}\p{M}º .,/\-–]+$")]
    private static partial Regex Shape();
}
