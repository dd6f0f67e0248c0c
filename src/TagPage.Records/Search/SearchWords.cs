using System.Text.RegularExpressions;

namespace TagPage.Records.Search;

/// <summary>Turns what somebody typed into a question for the search table: every word, or its beginning, must be there.</summary>
public static partial class SearchWords
{
    private const int MostWords = 6;

    /// <summary>An FTS5 query, or null when nothing typed is a letter or a digit.</summary>
    public static string? Of(string? typed)
    {
        var words = Word().Matches(PlainLetters.Of(typed ?? "")).Take(MostWords).Select(w => $"\"{w.Value}\"*").ToList();
        return words.Count == 0 ? null : string.Join(' ', words);
    }

    [GeneratedRegex(@"[\p{L}\p{M}\p{N}]{1,40}")]
    private static partial Regex Word();
}
