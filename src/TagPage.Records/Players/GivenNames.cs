using System.Text;

namespace TagPage.Records.Players;

/// <summary>Players as their own household calls them.</summary>
public static class GivenNames
{
    /// <summary>The first word of each name; whole names if two of them would otherwise be alike.</summary>
    public static IReadOnlyDictionary<string, string> Of(IEnumerable<string> names)
    {
        var all = names.Distinct(StringComparer.Ordinal).ToList();
        var isClear = all.Select(First).Distinct(StringComparer.OrdinalIgnoreCase).Count() == all.Count;
        return all.ToDictionary(n => n, n => isClear ? First(n) : n, StringComparer.Ordinal);
    }

    // Names in Chinese characters and kana begin with the family.
    private static string First(string name) => name.EnumerateRunes().Any(IsEastAsian) ? name : FirstWord(name);

    private static bool IsEastAsian(Rune rune) => rune.Value is >= 0x3040 and <= 0x30FF or >= 0x3400 and <= 0x9FFF or >= 0xF900 and <= 0xFAFF or >= 0x20000 and <= 0x323AF;

    private static string FirstWord(string name) => name.Split([' ', '\u00A0', '\u3000'], StringSplitOptions.RemoveEmptyEntries).FirstOrDefault() ?? name;
}
