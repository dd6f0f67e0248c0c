using System.Globalization;

namespace TagPage.Web.Words;

/// <summary>The languages in which clients are written to and strangers are answered.</summary>
public static class Languages
{
    public static IReadOnlyList<Language> All { get; } =
    [
        Make("en", "English", "d MMM yyyy"),
        Make("es", "Español", "d MMM yyyy"),
        Make("fr", "Français", "d MMM yyyy"),
        Make("de", "Deutsch", "d. MMM yyyy"),
        Make("it", "Italiano", "d MMM yyyy"),
        Make("pt", "Português", "d MMM yyyy", culture: "pt-PT"),
        Make("ja", "日本語", "yyyy年M月d日"),
        Make("zh", "中文", "yyyy年M月d日"),
    ];

    public static Language English => All[0];

    /// <summary>The language of a code as it is kept on file; null for one that is not among ours.</summary>
    public static Language? Of(string? code) => All.FirstOrDefault(l => l.Code.Equals(code, StringComparison.OrdinalIgnoreCase));

    /// <summary>The same, with English for one that is not among ours.</summary>
    public static Language OfOrEnglish(string? code) => Of(code) ?? English;

    public static string NameOf(string code) => Of(code)?.Name ?? code;

    private static Language Make(string code, string name, string dayPattern, string? culture = null) =>
        new(code, name, dayPattern, CultureInfo.GetCultureInfo(culture ?? code), PhraseFile.Read(code));
}
