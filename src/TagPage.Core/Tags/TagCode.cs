using System.Buffers;

namespace TagPage.Core.Tags;

/// <summary>
/// The opaque code of a tag: ten random characters of Crockford's base 32 (50 bits) and one check character
/// of ISO/IEC 7064 MOD 37,36. The check character is never I, L, O or U, so all eleven are of the same alphabet.
/// </summary>
public readonly record struct TagCode
{
    /// <summary>Characters of a code as stored.</summary>
    public const int Length = 11;

    /// <summary>Crockford's base 32: no I, L, O, U.</summary>
    public const string Alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    // One draw in nine must be repeated; a hundred in a row means that the generator is broken.
    private const int MostDraws = 100;

    private static readonly SearchValues<char> Allowed = SearchValues.Create(Alphabet);

    private readonly string? _text;

    private TagCode(string text) => _text = text;

    /// <summary>For people: "7K2M-9Q4T-XAV".</summary>
    public string Display => _text is null ? "" : $"{_text[..4]}-{_text[4..8]}-{_text[8..]}";

    /// <summary>A new code.</summary>
    /// <param name="fillRandom">Fills the bytes from a cryptographic generator.</param>
    /// <exception cref="InvalidOperationException">The generator keeps giving the same bytes.</exception>
    public static TagCode Draw(Action<Span<byte>> fillRandom)
    {
        Span<byte> random = stackalloc byte[Length - 1];
        Span<char> text = stackalloc char[Length];
        for (var draw = 0; draw < MostDraws; draw++)
        {
            fillRandom(random);
            for (var i = 0; i < random.Length; i++)
                text[i] = Alphabet[random[i] % Alphabet.Length];
            text[^1] = CheckCharacter.Of(text[..^1]);
            if (Allowed.Contains(text[^1]))
                return new TagCode(text.ToString());
        }
        throw new InvalidOperationException("The random generator repeats itself.");
    }

    /// <summary>A code as it is stored: eleven upper-case characters and nothing else.</summary>
    /// <exception cref="FormatException">The text is not exactly that, or its check character is wrong.</exception>
    public static TagCode Parse(string canonical) =>
        Judge(canonical).Code ?? throw new FormatException("Not a tag code as it is stored.");

    /// <summary>
    /// Reads what a person typed or a camera scanned: any case, spaces, dashes, O for 0, I and L for 1,
    /// alone or in a whole address. Never throws, and is cheap for a text of any length.
    /// </summary>
    public static TagCodeReading Read(string? typed) => Judge(TypedCode.Clean(typed));

    /// <summary>
    /// The first characters of a code, read as forgivingly as a whole one; null where no code can begin so.
    /// What is longer than a code is none.
    /// </summary>
    public static string? Begin(string? typed) =>
        TypedCode.Clean(typed) is { Length: <= Length } text && !text.AsSpan().ContainsAnyExcept(Allowed) ? text : null;

    /// <summary>As stored and as in an address: "7K2M9Q4TXAV".</summary>
    public override string ToString() => _text ?? "";

    private static TagCodeReading Judge(string text)
    {
        if (text.Length != Length || text.AsSpan().ContainsAnyExcept(Allowed))
            return new TagCodeReading(TagCodeOutcome.NotACode, null);
        return CheckCharacter.IsValid(text)
            ? new TagCodeReading(TagCodeOutcome.Code, new TagCode(text))
            : new TagCodeReading(TagCodeOutcome.WrongCheckCharacter, null);
    }
}
