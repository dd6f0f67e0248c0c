namespace TagPage.Web.Tests.Words;

/// <summary>How long an SMS text is: the GSM 7-bit default alphabet and its extension table, 3GPP TS 23.038, 6.2.1 and 6.2.1.1.</summary>
internal static class Gsm7
{
    private const string Basic =
        "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?"
        + "¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà";

    private const string Extension = "\f^{}\\[~]|€";

    /// <summary>The table has 128 places, one of which is the escape to the extension.</summary>
    public static int Places => Basic.Length + 1;

    /// <summary>Septets; null where a character is in neither table, so that the text has to go as UCS-2.</summary>
    public static int? Length(string text)
    {
        var length = 0;
        foreach (var character in text)
        {
            if (Basic.Contains(character, StringComparison.Ordinal))
                length++;
            else if (Extension.Contains(character, StringComparison.Ordinal))
                length += 2;
            else
                return null;
        }
        return length;
    }
}
