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

    private static string First(string name) => name.Split([' ', '\u00A0', '\u3000'], StringSplitOptions.RemoveEmptyEntries).FirstOrDefault() ?? name;
}
