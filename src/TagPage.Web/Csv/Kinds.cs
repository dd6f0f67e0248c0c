using System.Globalization;
using System.Text;
using System.Text.Json;
using TagPage.Core.Text;
using TagPage.Records.Shop;

namespace TagPage.Web.Csv;

/// <summary>The kinds of cells that sheets are made of.</summary>
public static class Kinds
{
    private const NumberStyles Plain = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    private static readonly DateOnly LastDay = new(2199, 12, 31);

    public static CellKind<string> Line(int most) => new($"one line, at most {most} characters", text =>
        text.Any(IsUntypable) || !TypedText.IsOneLine(text) ? Wrong<string>("Write this on one line, without tabs or control characters.") : Limited(text, most));

    /// <summary>Text that may run over several lines.</summary>
    public static CellKind<string> Note(int most) => new($"text, at most {most} characters", text =>
    {
        var lines = TypedText.Lines(text);
        return lines.Any(c => IsUntypable(c) && c is not ('\n' or '\t'))
            ? Wrong<string>("Remove the control characters from this text.")
            : Limited(lines, most);
    });

    public static CellKind<bool?> YesNo { get; } = new("yes or no", text => text.ToUpperInvariant() switch
    {
        "YES" or "1" => new Cell<bool?>(true, null),
        "NO" or "0" => new Cell<bool?>(false, null),
        _ => Wrong<bool?>($"Enter yes or no, not “{Clip(text)}”."),
    });

    public static CellKind<DateOnly?> Day { get; } = new("a date like 2027-03-14", text =>
        !DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? Wrong<DateOnly?>($"Enter a date as 2027-03-14 (year-month-day), not “{Clip(text)}”.")
        : day < ShopClock.Earliest || day > LastDay ? Wrong<DateOnly?>($"Enter a date between the years {ShopClock.Earliest.Year} and 2199.")
        : new Cell<DateOnly?>(day, null));

    public static CellKind<int?> Whole(int least, int most) => new($"a whole number from {least} to {most}", text =>
        int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most
            ? new Cell<int?>(number, null)
            : Wrong<int?>($"Enter a whole number from {least} to {most}, not “{Clip(text)}”."));

    /// <summary>24.5 or 24,5; a comma is never a thousands mark.</summary>
    public static CellKind<decimal?> Number(decimal least, decimal most, int places) => new(NumberTakes(least, most), text =>
        !decimal.TryParse(text.Replace(',', '.'), Plain, CultureInfo.InvariantCulture, out var number)
            ? Wrong<decimal?>($"Enter a number here, like 24.5, not “{Clip(text)}”.")
        : number < least || number > most ? Wrong<decimal?>($"Enter {NumberTakes(least, most)}, not {Clip(text)}.")
        : number != Math.Round(number, places) ? Wrong<decimal?>(places == 0 ? "Enter a whole number." : $"Enter at most {places} decimal places.")
        : new Cell<decimal?>(number, null));

    /// <summary>The names of an enumeration in lower case with underscores, in_turn, or as the records name them, InTurn.</summary>
    public static CellKind<T?> OneOf<T>() where T : struct, Enum
    {
        var values = Enum.GetValues<T>().ToDictionary(NameOf);
        var takes = Join([.. values.Keys]);
        return new CellKind<T?>(takes, text => values.TryGetValue(Names.Plain(text), out var value) || (Enum.GetNames<T>().Contains(text, StringComparer.Ordinal) && Enum.TryParse(text, out value))
            ? new Cell<T?>(value, null)
            : Wrong<T?>($"Enter {takes}, not “{Clip(text)}”."));
    }

    /// <summary>As files name a value of an enumeration.</summary>
    public static string NameOf<T>(T value) where T : struct, Enum => JsonNamingPolicy.SnakeCaseLower.ConvertName(value.ToString());

    /// <summary>One of a few words, given back as they are written here.</summary>
    public static CellKind<string> Word(params string[] words) => new(Join(words), text =>
        words.FirstOrDefault(w => w.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } word
            ? new Cell<string>(word, null)
            : Wrong<string>($"Enter {Join(words)}, not “{Clip(text)}”."));

    public static Cell<T> Wrong<T>(string sentence) => new(default, sentence);

    /// <summary>Enough of a wrong text to find it again.</summary>
    public static string Clip(string text) => text.Length > 30 ? text[..30] + "…" : text;

    // U+FFFE and U+FFFF are no characters; composing would throw.
    private static bool IsUntypable(char c) => char.IsControl(c) || c is '\uFFFE' or '\uFFFF';

    /// <summary>Text is kept composed (NFC), so that a name is found again however it was typed.</summary>
    private static Cell<string> Limited(string text, int most) => text.Normalize(NormalizationForm.FormC) is var composed && composed.Length > most
        ? Wrong<string>($"Keep this within {most} characters; it has {composed.Length}.")
        : new Cell<string>(composed, null);

    private static string NumberTakes(decimal least, decimal most) =>
        string.Create(CultureInfo.InvariantCulture, $"a number from {least} to {most}");

    private static string Join(string[] words) => words.Length == 1 ? words[0] : string.Join(", ", words[..^1]) + " or " + words[^1];
}
