using System.Globalization;
using System.Text;
using TagPage.Records.Search;

namespace TagPage.Records.Import;

/// <summary>What two spellings of a name have in common: letters without accents and case, the words in any order.</summary>
public static class NameKey
{
    /// <summary>Empty for a name without a letter or a digit, which is like no other.</summary>
    public static string Of(string name)
    {
        var plain = new StringBuilder(name.Length);
        foreach (var letter in PlainLetters.Of(name).Normalize(NormalizationForm.FormD))
            if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark)
                plain.Append(char.IsLetterOrDigit(letter) || char.IsSurrogate(letter) ? char.ToUpperInvariant(letter) : ' ');
        return string.Join(' ', plain.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal));
    }
}
