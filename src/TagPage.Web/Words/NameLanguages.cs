using System.Globalization;

namespace TagPage.Web.Words;

/// <summary>Languages whose order names can stand in: all with a code of two letters that the platform knows.</summary>
public static class NameLanguages
{
    public static IReadOnlyList<(string Code, string Name)> All { get; } =
    [
        .. CultureInfo.GetCultures(CultureTypes.NeutralCultures)
            .Where(culture => culture.Name.Length == 2)
            .Select(culture => (culture.Name, culture.EnglishName))
            .OrderBy(language => language.EnglishName, StringComparer.Ordinal),
    ];
}
