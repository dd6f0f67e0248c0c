namespace TagPage.Web.Words;

/// <summary>The languages a client can be written to in: ISO 639-1 codes with their own names.</summary>
public static class Languages
{
    public static IReadOnlyList<(string Code, string Name)> All { get; } =
    [
        ("en", "English"),
        ("es", "Español"),
        ("fr", "Français"),
        ("de", "Deutsch"),
        ("it", "Italiano"),
        ("pt", "Português"),
        ("ja", "日本語"),
        ("zh", "中文"),
    ];

    public static string NameOf(string code) => All.FirstOrDefault(l => l.Code == code).Name ?? code;
}
