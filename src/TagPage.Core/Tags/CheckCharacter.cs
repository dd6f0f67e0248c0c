namespace TagPage.Core.Tags;

/// <summary>
/// The check character system ISO/IEC 7064 MOD 37,36 over 0–9 and A–Z.
/// It catches every single wrong character and nearly all swaps of neighbours, not every one.
/// </summary>
public static class CheckCharacter
{
    private const string Alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private const int Modulus = 36;

    /// <summary>The check character for a text of upper-case letters and digits.</summary>
    /// <exception cref="ArgumentException">The text is empty or holds another character.</exception>
    public static char Of(ReadOnlySpan<char> text)
    {
        var product = Fold(text);
        if (product < 0)
            throw new ArgumentException("Only digits and upper-case letters have a check character.", nameof(text));
        return Alphabet[(Modulus + 1 - product) % Modulus];
    }

    /// <summary>Whether the last character is the right check character for those before it.</summary>
    public static bool IsValid(ReadOnlySpan<char> text)
    {
        if (text.Length < 2)
            return false;
        var product = Fold(text[..^1]);
        return product >= 0 && text[^1] == Alphabet[(Modulus + 1 - product) % Modulus];
    }

    private static int Fold(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
            return -1;
        var product = Modulus;
        foreach (var character in text)
        {
            var value = Alphabet.IndexOf(character, StringComparison.Ordinal);
            if (value < 0)
                return -1;
            var sum = (product + value) % Modulus;
            product = (sum == 0 ? Modulus : sum) * 2 % (Modulus + 1);
        }
        return product;
    }
}
