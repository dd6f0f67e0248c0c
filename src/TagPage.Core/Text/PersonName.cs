namespace TagPage.Core.Text;

/// <summary>Names of people, and which part of them is the family's.</summary>
public static class PersonName
{
    /// <summary>Stands between the words of a family name where somebody told that they are one.</summary>
    public const char Tie = '\u00A0';

    /// <summary>
    /// As it is kept: "de la Cruz, Ana" is Ana de la Cruz with a family name of three words. Anything without one comma
    /// between two names stays as typed.
    /// </summary>
    public static string Kept(string typed) => typed.Split(',') is [var family, var given] && family.Trim() is { Length: > 0 } last && given.Trim() is { Length: > 0 } first
        ? $"{first} {last.Replace(' ', Tie)}"
        : typed;

    /// <summary>
    /// Family name first, to sort by. It is the last word and all that is tied to it; before it, from the first small word on
    /// (van der Berg), where the name begins with a capital.
    /// </summary>
    public static string FamilyFirst(string name)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length < 2)
            return name.Replace(Tie, ' ');
        var particle = char.IsUpper(words[0][0]) ? Array.FindIndex(words, 1, word => char.IsLower(word[0])) : -1;
        var family = particle < 0 ? words.Length - 1 : particle;
        return string.Join(' ', [.. words[family..], .. words[..family]]).Replace(Tie, ' ');
    }
}
