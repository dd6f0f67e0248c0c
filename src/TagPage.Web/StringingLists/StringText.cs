using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using TagPage.Records.Import;

namespace TagPage.Web.StringingLists;

/// <summary>A string as a list names it.</summary>
/// <param name="Name">Without its gauge; empty where the list names none.</param>
/// <param name="GaugeMm">Null where none is written in mm.</param>
public sealed partial record StringText(string Name, decimal? GaugeMm)
{
    /// <summary>The same for all spellings of one.</summary>
    public string Key => IsKnown ? string.Create(CultureInfo.InvariantCulture, $"{NameKey.Of(Name)} {GaugeMm:0.###}").Trim() : "?";

    public bool IsKnown => Name.Length > 0;

    /// <summary>Mains and crosses: a stroke with blanks around it, or a plus, stands between two.</summary>
    public static (StringText Mains, StringText? Crosses) Read(string text)
    {
        var parts = Between().Split(text.Trim());
        return parts is [{ Length: > 0 } mains, { Length: > 0 } crosses] ? (One(mains), One(crosses)) : (One(text), null);
    }

    /// <summary>With a gauge that stands elsewhere; null where its own is another.</summary>
    public StringText? With(decimal? mm, string name) =>
        GaugeMm is { } own && mm is { } other && own != other ? null
        : Name.Split(' ').Contains(name, StringComparer.OrdinalIgnoreCase) || name.Length == 0 ? this with { GaugeMm = GaugeMm ?? mm }
        : this with { Name = $"{Name} {name}" };

    private static StringText One(string text)
    {
        var plain = text.Normalize(NormalizationForm.FormC).Trim();
        if (NameKey.Of(plain).Length == 0)
            return new StringText("", null);
        var gauges = Gauge().Matches(plain);
        if (gauges is not [var only] || decimal.Parse(only.Groups["mm"].Value.Replace(',', '.'), CultureInfo.InvariantCulture) is not (>= 0.5m and <= 1.6m and var mm))
            return new StringText(plain, null);
        var name = Blanks().Replace(plain.Remove(only.Index, only.Length), " ").Trim(' ', '-', ',', '(', ')', 'Ø', 'ø', '⌀');
        return NameKey.Of(name).Length == 0 ? new StringText(plain, mm) : new StringText(name, mm);
    }

    [GeneratedRegex(@"\s+[/+]\s+")]
    private static partial Regex Between();

    [GeneratedRegex(@"(?<![\d.,])(?<mm>[01][.,]\d{1,3})(?![\d.,]*\d)\s*(mm)?", RegexOptions.IgnoreCase)]
    private static partial Regex Gauge();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
