using System.Text;
using TagPage.Web.Csv;

namespace TagPage.Web.StringingLists;

/// <summary>The bytes of a list as text: UTF-8, UTF-16 with its mark, or else Windows-1252, which every byte can be.</summary>
public static class ListText
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private static readonly UnicodeEncoding StrictLittle = new(bigEndian: false, byteOrderMark: false, throwOnInvalidBytes: true);
    private static readonly UnicodeEncoding StrictBig = new(bigEndian: true, byteOrderMark: false, throwOnInvalidBytes: true);
    private static readonly Encoding Windows1252 = CodePagesEncodingProvider.Instance.GetEncoding(1252)!;

    /// <param name="Text">What was read; null where it cannot be.</param>
    /// <param name="Encoding">As people call it.</param>
    /// <param name="Wrong">Why it cannot be read.</param>
    public sealed record Reading(string? Text, string Encoding, string? Wrong);

    public static Reading Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > SheetText.MostBytes)
            return Refused(SheetText.TooLarge);
        if (bytes.StartsWith("PK"u8) || bytes.StartsWith<byte>([0xD0, 0xCF, 0x11, 0xE0]))
            return Refused("This is a workbook or an archive. " + SheetText.SaveAgain);
        var (encoding, name, mark) = Of(bytes);
        try
        {
            return Checked(encoding.GetString(bytes[mark..]), name);
        }
        catch (DecoderFallbackException)
        {
            return name == "UTF-8" ? Checked(Windows1252.GetString(bytes), "Windows-1252") : Refused($"The file says that it is {name} and is not. Save it anew as “CSV UTF-8”, then send that file.");
        }
    }

    private static (Encoding Encoding, string Name, int Mark) Of(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith<byte>([0xFF, 0xFE]) ? (StrictLittle, "UTF-16", 2)
        : bytes.StartsWith<byte>([0xFE, 0xFF]) ? (StrictBig, "UTF-16", 2)
        : (StrictUtf8, "UTF-8", bytes.StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0);

    // What is no text has control characters; so has UTF-16 without its mark.
    private static Reading Checked(string text, string name) => text.AsSpan().ContainsAnyInRange('\0', '\b') || text.Contains('\uFFFE', StringComparison.Ordinal) || text.Contains('\uFFFF', StringComparison.Ordinal)
        ? Refused("This is not a text file, or one in an encoding that cannot be told. Save it as “CSV UTF-8”, then send that file.")
        : new Reading(text, name, null);

    private static Reading Refused(string sentence) => new(null, "", sentence);
}
