using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace TagPage.Web.StringingLists;

/// <summary>What a list writes before its decimals.</summary>
public enum DecimalMark { Point, Comma }

/// <summary>
/// Reads amounts as lists write them: 1.234,50 and 1,234.50 are clear, 1.234 and 1,234 are not. A blank or an apostrophe between digits
/// is a mark of thousands.
/// </summary>
public static partial class AmountText
{
    /// <summary>What the text may mean, by the mark before the decimals; empty for no amount. One entry speaks for that mark.</summary>
    /// <param name="text">A cell, with or without a currency.</param>
    public static IReadOnlyDictionary<DecimalMark, decimal> Read(string text)
    {
        var digits = Gap().Replace(Currency().Replace(text.Normalize(NormalizationForm.FormKC).Trim(), "").Trim(), "");
        if (digits.Length is 0 or > 15 || !Shape().IsMatch(digits))
            return new Dictionary<DecimalMark, decimal>();
        var found = new Dictionary<DecimalMark, decimal>();
        foreach (var (mark, point, thousands) in new[] { (DecimalMark.Point, '.', ','), (DecimalMark.Comma, ',', '.') })
            if (Value(digits, point, thousands) is { } value)
                found[mark] = value;
        return found;
    }

    /// <summary>The currency beside the amount, as it is written; empty for none.</summary>
    public static string CurrencyOf(string text) => string.Concat(Currency().Matches(text.Normalize(NormalizationForm.FormKC).Trim()).Select(match => match.Value));

    /// <summary>Whether it is written with a mark that could be either.</summary>
    public static bool IsClear(IReadOnlyDictionary<DecimalMark, decimal> reading) => reading.Values.Distinct().Count() == 1;

    private static decimal? Value(string digits, char point, char thousands)
    {
        var (whole, decimals) = digits.Split(point) switch
        {
            [var only] => (only, ""),
            [var before, var after] => (before, after),
            _ => ("", ","),
        };
        var groups = whole.Split(thousands);
        var fits = decimals.All(char.IsAsciiDigit) && groups.All(g => g.All(char.IsAsciiDigit)) && groups[0].Length > 0
            && (groups.Length == 1 || (groups[0].Length <= 3 && groups[0] != "0" && groups.Skip(1).All(g => g.Length == 3)));
        return fits ? decimal.Parse($"{string.Concat(groups)}.{decimals}0", CultureInfo.InvariantCulture) : null;
    }

    [GeneratedRegex(@"^(\p{Sc}|[A-Za-z]{2,4}\.?|kr\.?)|(\p{Sc}|[A-Za-z]{2,4}\.?|元|円|[,.]-+)$")]
    private static partial Regex Currency();

    [GeneratedRegex(@"(?<=\d)[\s'’](?=\d{3}(\D|$))")]
    private static partial Regex Gap();

    [GeneratedRegex("^[0-9][0-9.,]*$")]
    private static partial Regex Shape();
}
