using System.Text;

namespace TagPage.Records.Search;

/// <summary>
/// Letters that a keyboard without them types as others. Accents are the search table's to leave out; these are letters of their
/// own to Unicode, which takes nothing off them.
/// </summary>
public static class PlainLetters
{
    // A letter, and what stands for it.
    private static readonly Dictionary<char, string> Plain = "łl ŁL øo ØO đd ĐD ðd ÐD ħh ĦH ŧt ŦT ıi ŋn ŊN ßss ẞSS æae ÆAe œoe ŒOe þth ÞTh"
        .Split(' ').ToDictionary(pair => pair[0], pair => pair[1..]);

    public static string Of(string text)
    {
        if (!text.Any(Plain.ContainsKey))
            return text;
        var plain = new StringBuilder(text.Length + 4);
        foreach (var letter in text)
            plain.Append(Plain.GetValueOrDefault(letter) ?? letter.ToString());
        return plain.ToString();
    }
}
