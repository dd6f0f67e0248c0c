using System.Text.RegularExpressions;

namespace TagPage.Web.Tests.Cast;

/// <summary>An answer without the framework's sealed random letters, which spell any short word sooner or later.</summary>
internal static partial class Readable
{
    public static string Of(string answer) => Sealed().Replace(answer, "");

    [GeneratedRegex("CfDJ8[A-Za-z0-9_-]+")]
    private static partial Regex Sealed();
}
