namespace TagPage.Core.Money;

/// <summary>
/// International bank account numbers, ISO 13616: two letters of the country, two check digits, up to 30 letters and digits.
/// Moved to the end, with letters as 10 to 35, the whole number leaves 1 when divided by 97 (ISO 7064, MOD 97-10).
/// </summary>
public static class Iban
{
    private const int Shortest = 15, Longest = 34;

    /// <summary>Without spaces and in capitals; null for what cannot be an account's number.</summary>
    public static string? Read(string? typed)
    {
        var text = string.Concat((typed ?? "").Where(c => !char.IsWhiteSpace(c))).ToUpperInvariant();
        return text.Length is >= Shortest and <= Longest && text.All(char.IsAsciiLetterOrDigit)
            && text[..2].All(char.IsAsciiLetter) && text[2..4].All(char.IsAsciiDigit) && Remainder(text) == 1
            ? text
            : null;
    }

    /// <summary>In groups of four, as it is written on paper.</summary>
    public static string Shown(string iban) => string.Join(' ', iban.Chunk(4).Select(four => new string(four)));

    private static int Remainder(string iban) =>
        (iban[4..] + iban[..4]).Aggregate(0, (sum, c) => char.IsAsciiDigit(c) ? (sum * 10 + (c - '0')) % 97 : (sum * 100 + (c - 'A' + 10)) % 97);
}
