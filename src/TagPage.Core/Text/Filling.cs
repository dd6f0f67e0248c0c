using System.Text.RegularExpressions;

namespace TagPage.Core.Text;

/// <summary>Puts values into a phrase.</summary>
public static partial class Filling
{
    /// <summary>
    /// Replaces each {name} by its value, in one pass: braces inside a value stay as they are, and so does a name that
    /// no value was given for. Nothing is HTML-encoded; Razor does that.
    /// </summary>
    public static string Fill(this string phrase, params ReadOnlySpan<(string Name, string Value)> values)
    {
        var given = new Dictionary<string, string>(values.Length);
        foreach (var (name, value) in values)
            given[name] = value;
        return Placeholder().Replace(phrase, found => given.GetValueOrDefault(found.Groups[1].Value, found.Value));
    }

    /// <summary>The phrase taken apart: its words, and each {name} with its braces as the words beside it.</summary>
    public static IEnumerable<(string Words, string? Name)> Pieces(string phrase)
    {
        var at = 0;
        foreach (Match found in Placeholder().Matches(phrase))
        {
            yield return (phrase[at..found.Index], null);
            yield return (found.Value, found.Groups[1].Value);
            at = found.Index + found.Length;
        }
        yield return (phrase[at..], null);
    }

    /// <summary>
    /// The phrase without the part that a placeholder stands in: from the comma before it to the next mark, or its whole
    /// sentence. For values that there are none of.
    /// </summary>
    public static string WithoutClauseOf(this string phrase, string name)
    {
        const string marks = @"\n,;.!?、，；。！？";
        var around = $@"[^{marks}]*\{{{Regex.Escape(name)}\}}[^{marks}]*";
        return Regex.Replace(phrase, $"[,;、，；]{around}|{around}[.!?。！？]?", "");
    }

    [GeneratedRegex(@"\{(\w+)\}")]
    private static partial Regex Placeholder();
}
