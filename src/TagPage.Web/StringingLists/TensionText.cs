using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using TagPage.Core.Units;

namespace TagPage.Web.StringingLists;

/// <param name="Mains">As written.</param>
/// <param name="Crosses">The same as the mains where one number stands alone.</param>
/// <param name="Unit">Null where none is written.</param>
public sealed record TensionReading(decimal Mains, decimal Crosses, TensionUnit? Unit);

/// <summary>
/// Reads tensions as lists write them: 52, 52/50, 24x25 kg, 23,5-23, 55#. How people write them is common practice, no source. What may
/// mean two things is not read: 52,50 (a decimal or a pair), 50-52 (mains and crosses or a range), 16x19 (a pattern).
/// </summary>
public static partial class TensionText
{
    private const RegexOptions Options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    /// <summary>Mains and crosses are hardly ever further apart, in either unit.</summary>
    private const int MostApart = 8;

    /// <summary>Null for what is no tension, or not clearly one.</summary>
    public static TensionReading? Read(string text)
    {
        if (text.Length > 40 || Tension().Match(text.Normalize(NormalizationForm.FormKC).Trim()) is not { Success: true } match)
            return null;
        var (mains, crosses) = (Number(match.Groups["a"]), match.Groups["b"].Success ? Number(match.Groups["b"]) : Number(match.Groups["a"]));
        var units = new[] { match.Groups["ua"], match.Groups["ub"] }.Where(g => g.Success).Select(g => Unit(g.Value)).Distinct().ToList();
        if (mains is not { } one || crosses is not { } other || units.Count > 1 || one < 1 || other < 1)
            return null;
        TensionUnit? unit = units.Count == 1 ? units[0] : null;
        return IsDoubtful(match.Groups["sep"].Value, one, other, unit) ? null : new TensionReading(one, other, unit);
    }

    /// <summary>A unit that stands alone, in a cell or within a heading: “kg”, “Tension (lbs)”.</summary>
    public static TensionUnit? UnitIn(string text) => UnitWord().Matches(text.Normalize(NormalizationForm.FormKC)).Select(m => Unit(m.Value)).Distinct().ToList() is [var only] ? only : null;

    private static bool IsDoubtful(string mark, decimal mains, decimal crosses, TensionUnit? unit) => mark switch
    {
        "-" or "–" => mains < crosses,
        "x" or "X" or "×" or "*" => unit is null && mains is >= 12 and <= 24 && crosses >= mains && crosses <= 26,
        _ => false,
    };

    /// <summary>Two digits behind a mark that could be the crosses are not read as decimals.</summary>
    private static decimal? Number(Group group)
    {
        var parts = group.Value.Split('.', ',');
        return parts is [var whole, { Length: 2 } decimals] && Math.Abs(int.Parse(whole, CultureInfo.InvariantCulture) - int.Parse(decimals, CultureInfo.InvariantCulture)) <= MostApart
            ? null
            : decimal.Parse(group.Value.Replace(',', '.'), CultureInfo.InvariantCulture);
    }

    private static TensionUnit Unit(string word) => word.ToLowerInvariant()[0] is 'k' or '公' or 'キ' ? TensionUnit.Kg : TensionUnit.Lb;

    private const string Units = "kilogramm[ei]?|kilogrammes?|kilogram[os]?|kilograms|kilos?|kgs?|kp|公斤|キロ|pounds?|pfund|lbs?|#|libras?|livres?|libbre|磅|ポンド";

    private const string Figure = @"\d{1,3}(?:[.,]\d{1,2})?";

    [GeneratedRegex($@"^(?<a>{Figure})\s*(?<ua>{Units})?\.?(?:\s*(?<sep>[/|\\:&xX×*\-–])\s*(?<b>{Figure})\s*(?<ub>{Units})?\.?)?$", Options)]
    private static partial Regex Tension();

    [GeneratedRegex($@"(?<!\p{{L}})(?:{Units})(?!\p{{L}})", Options)]
    private static partial Regex UnitWord();
}
