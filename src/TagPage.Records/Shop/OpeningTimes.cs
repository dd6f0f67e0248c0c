using System.Globalization;
using System.Text.RegularExpressions;

namespace TagPage.Records.Shop;

/// <summary>The opening times of one weekday as an owner types them: 10:00–13:00, 14:00–18:00; or 10-18.</summary>
public static partial class OpeningTimes
{
    private const int Midnight = 24 * 60;

    [GeneratedRegex(@"^\s*(\d{1,2})(?:[:.](\d{2}))?\s*[-–—]\s*(\d{1,2})(?:[:.](\d{2}))?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Span { get; }

    /// <summary>Empty for a day on which it is closed, null for what is no times: unreadable, backwards, or overlapping.</summary>
    public static IReadOnlyList<OpeningSpan>? Read(int weekday, string? typed)
    {
        var spans = new List<OpeningSpan>();
        foreach (var part in (typed ?? "").Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (Span.Match(part) is not { Success: true, Groups: var g } || Minutes(g[1], g[2]) is not { } opens || Minutes(g[3], g[4]) is not { } closes)
                return null;
            if (closes <= opens || spans.LastOrDefault()?.ClosesAt >= opens)
                return null;
            spans.Add(new OpeningSpan { Weekday = weekday, OpensAt = opens, ClosesAt = closes });
        }
        return spans;
    }

    public static string Write(IEnumerable<OpeningSpan> spans) => string.Join(", ", spans.Select(span => $"{Clock(span.OpensAt)}–{Clock(span.ClosesAt)}"));

    private static int? Minutes(Group hours, Group minutes)
    {
        var at = int.Parse(hours.ValueSpan, CultureInfo.InvariantCulture) * 60;
        var past = minutes.Success ? int.Parse(minutes.ValueSpan, CultureInfo.InvariantCulture) : 0;
        return past < 60 && at + past <= Midnight ? at + past : null;
    }

    /// <summary>18:30, of minutes since midnight.</summary>
    public static string Clock(int minutes) => string.Create(CultureInfo.InvariantCulture, $"{minutes / 60}:{minutes % 60:00}");
}
