using System.Text;

namespace TagPage.Web.Words;

/// <summary>
/// How an SMS text travels: 3GPP TS 23.038 (6.2.1 the GSM 7-bit alphabet, 6.2.1.1 its extension, 6.2.3 UCS-2) and
/// TS 23.040 (9.2.3.24.1: what a part of a longer text holds). The tables are written down from memory.
/// </summary>
/// <param name="IsGsm7">False where one character outside the alphabet makes the whole text UCS-2.</param>
/// <param name="Length">Septets, or UTF-16 units.</param>
/// <param name="Parts">Messages that are paid for.</param>
public sealed record Sms(bool IsGsm7, int Length, int Parts)
{
    public const int OnePartGsm7 = 160, OnePartUcs2 = 70;

    private const int PartOfManyGsm7 = 153, PartOfManyUcs2 = 67;

    private const string Basic =
        "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?"
        + "¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà";

    private const string Extension = "\f^{}\\[~]|€";

    public static Sms Of(string text)
    {
        var isGsm7 = Fits(text);
        List<int> units = isGsm7
            ? [.. text.Select(c => Extension.Contains(c, StringComparison.Ordinal) ? 2 : 1)]
            : [.. text.EnumerateRunes().Select(r => r.Utf16SequenceLength)];
        return new Sms(isGsm7, units.Sum(), isGsm7 ? Split(units, OnePartGsm7, PartOfManyGsm7) : Split(units, OnePartUcs2, PartOfManyUcs2));
    }

    public static bool Fits(string text) =>
        text.All(c => Basic.Contains(c, StringComparison.Ordinal) || Extension.Contains(c, StringComparison.Ordinal));

    /// <summary>Letters outside the alphabet without their marks, where that brings them in: Ō becomes O, é stays.</summary>
    public static string Fold(string text) => string.Concat(text.Select(c => Fits(c.ToString()) ? c.ToString() : Bare(c)));

    private static string Bare(char character)
    {
        if (character is '’' or '‘')
            return "'";
        var bare = character.ToString().Normalize(NormalizationForm.FormD)[..1];
        return Fits(bare) ? bare : character.ToString();
    }

    /// <summary>No character is split: what does not fit completely begins the next part.</summary>
    private static int Split(List<int> units, int one, int ofMany)
    {
        if (units.Sum() <= one)
            return 1;
        var (parts, filled) = (1, 0);
        foreach (var unit in units)
        {
            if (filled + unit > ofMany)
                (parts, filled) = (parts + 1, 0);
            filled += unit;
        }
        return parts;
    }
}
