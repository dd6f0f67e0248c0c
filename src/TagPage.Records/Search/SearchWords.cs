using System.Text.RegularExpressions;

namespace TagPage.Records.Search;

/// <summary>
/// Turns what somebody typed into a full-text query in which every word is quoted and may go on: "mar"* "fer"*. Nothing
/// typed is read as an operator. Null when nothing typed is a letter or a digit.
/// </summary>
public static partial class SearchWords
{
    private const int MostWords = 8;

    /// <summary>For names and frames, which are kept in plain letters.</summary>
    public static string? Of(string? typed) => AsTyped(PlainLetters.Of(typed ?? ""));

    /// <summary>For notes, which are kept as they were typed.</summary>
    public static string? AsTyped(string typed)
    {
        var words = Word().Matches(typed).Take(MostWords).Select(word => $"\"{word.Value}\"*").ToList();
        return words.Count == 0 ? null : string.Join(' ', words);
    }

    /// <summary>Whether each word is a single letter, which a good part of all records begin with.</summary>
    internal static bool AreLetters(string words) => words.Split(' ').All(word => word.Length == "\"x\"*".Length);

    /// <summary>The same words, none of which goes on.</summary>
    internal static string Whole(string words) => words.Replace("\"*", "\"", StringComparison.Ordinal);

    [GeneratedRegex(@"[\p{L}\p{M}\p{N}]+")]
    private static partial Regex Word();
}
