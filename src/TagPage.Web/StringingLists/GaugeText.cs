using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace TagPage.Web.StringingLists;

/// <summary>
/// A gauge as a list has it in a column of its own: 1.25, 1,25 mm, Ø 1.25, 125 (hundredths of a millimetre; common practice), 1.25/1.30, or
/// one of the trade’s names, 16 or 16L. Names overlap (common practice), so no diameter is made of one: it stays with the string’s name.
/// </summary>
/// <param name="Mm">Of the mains; null for a name.</param>
/// <param name="CrossesMm">Where it names two.</param>
/// <param name="Name">Empty for a diameter.</param>
public sealed partial record GaugeText(decimal? Mm, decimal? CrossesMm, string Name)
{
    private const decimal Least = 0.5m, Most = 1.6m;

    /// <summary>Null for what is no gauge.</summary>
    public static GaugeText? Read(string text)
    {
        var plain = text.Normalize(NormalizationForm.FormKC).Trim();
        if (Named().Match(plain) is { Success: true } named)
            return new GaugeText(null, null, named.Groups["name"].Value.ToUpperInvariant());
        return plain.Split('/', '+') switch
        {
            [var one] when Diameter(one) is { } mm => new GaugeText(mm, null, ""),
            [var mains, var crosses] when Diameter(mains) is { } first && Diameter(crosses) is { } second => new GaugeText(first, second, ""),
            _ => null,
        };
    }

    private static decimal? Diameter(string text)
    {
        if (Millimetres().Match(text) is not { Success: true } found)
            return null;
        var value = decimal.Parse(found.Groups["mm"].Value.Replace(',', '.'), CultureInfo.InvariantCulture);
        var mm = found.Groups["mm"].Value.Length == 3 && value == Math.Floor(value) ? value / 100 : value;
        return mm is >= Least and <= Most ? mm : null;
    }

    [GeneratedRegex(@"^\s*[Øø⌀]?\s*(?<mm>[0-9]([.,][0-9]{1,3})|[0-9]{3})\s*(mm)?\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Millimetres();

    [GeneratedRegex(@"^(?<name>(1[4-9]|2[0-2])L?)\s*(g|ga\.?|gauge)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Named();
}
