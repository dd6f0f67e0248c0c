using System.Globalization;
using TagPage.Core.Text;

namespace TagPage.Web.Words;

/// <summary>One language: its words, and how it writes days and numbers.</summary>
/// <param name="Code">ISO 639-1; fits the HTML attribute lang.</param>
/// <param name="Name">As its own speakers write it.</param>
/// <param name="DayPattern">With the month in letters, so that nobody can take the day for the month; in Japanese and Chinese signs name them.</param>
/// <param name="Culture">For months and numbers.</param>
/// <param name="Phrases">All that is said in it.</param>
public sealed record Language(string Code, string Name, string DayPattern, CultureInfo Culture, Phrases Phrases)
{
    /// <summary>14 Mar 2027, 14. März 2027, 2027年3月14日.</summary>
    public string Day(DateOnly day) => day.ToString(DayPattern, Culture);

    /// <summary>The same after an article. Italian elides it before 8 and 11 (l’8 marzo), which a phrase cannot know beforehand.</summary>
    public string DayInText(DateOnly day) => Code == "it" && day.Day is 8 or 11 ? $"giorno {Day(day)}" : Day(day);

    /// <summary>Monday 1 to Sunday 7, in full.</summary>
    public string Weekday(int day) => Culture.DateTimeFormat.GetDayName((DayOfWeek)(day % 7));

    /// <summary>A moment in the shop's time zone, to the minute, on a clock of 24 hours.</summary>
    public string Moment(DateTimeOffset local) => Phrases.Time.At.Fill(
        ("day", Day(DateOnly.FromDateTime(local.DateTime))),
        ("time", local.ToString("HH:mm", CultureInfo.InvariantCulture)));

    /// <summary>At most <paramref name="decimals"/> places, none that are zero.</summary>
    public string Number(decimal value, int decimals = 2) => Math.Round(value, decimals).ToString("0.####", Culture);

    /// <summary>The same for a number that was worked out.</summary>
    public string Number(double value, int decimals = 2) => Math.Round(value, decimals).ToString("0.####", Culture);

    public string Number(int value) => Number((decimal)value);

    /// <summary>20 %, 20%: Unicode CLDR has which languages put a blank before the sign.</summary>
    public string Percent(decimal value) => $"{Number(value)}{(Culture.NumberFormat.PercentPositivePattern == 0 ? "\u00A0" : "")}%";

    /// <summary>"1 week", "3 weeks", "2.5 times": a number with what it counts, to one place.</summary>
    public string Count(Counted counted, double n) =>
        (IsOne(Math.Round(n, 1)) ? counted.One : counted.Many).Fill(("n", Number(n, 1)));

    /// <summary>What stands between a name and what is said of it.</summary>
    public string Colon => Code switch
    {
        "fr" => "\u00A0: ",
        "ja" or "zh" => "：",
        _ => ": ",
    };

    /// <summary>"12, 14 and 16.5".</summary>
    public string List(IEnumerable<string> parts)
    {
        var all = parts.ToList();
        return all.Count < 2
            ? string.Concat(all)
            : string.Join(Phrases.Time.Comma, all.SkipLast(1)) + Phrases.Time.And + all[^1];
    }

    /// <summary>The same with a capital, to stand at the start.</summary>
    public string Sentence(string words) => words.Length == 0 ? "" : char.ToUpper(words[0], Culture) + words[1..];

    /// <summary>Unicode CLDR, plural rules: French and Portuguese say "one" for all below two, the others for 1 alone.</summary>
    private bool IsOne(double n) => Code is "fr" or "pt" ? n is >= 0 and < 2 : n == 1;

    public override string ToString() => Code;
}

/// <summary>Words that go with a number {n}: for one, and for several.</summary>
public sealed record Counted
{
    public required string One { get; init; }
    public required string Many { get; init; }
}
