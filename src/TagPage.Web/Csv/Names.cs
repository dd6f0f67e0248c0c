using System.Text.RegularExpressions;

namespace TagPage.Web.Csv;

/// <summary>Names as people type them: “Times a week”, “times-a-week” and “times_a_week” are one.</summary>
public static partial class Names
{
    public static string Plain(string typed) => Gaps().Replace(typed.Trim(), "_").ToLowerInvariant();

    [GeneratedRegex(@"[\s_\-]+")]
    private static partial Regex Gaps();
}
