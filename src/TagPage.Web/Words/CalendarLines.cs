using System.Text;

namespace TagPage.Web.Words;

/// <summary>The lines of a calendar file (RFC 5545, 3.1): at most 75 octets, folded between characters, however wide these are.</summary>
public static class CalendarLines
{
    private const int MostOctets = 75;
    private const string End = "\r\n";
    private const string Fold = End + " ";

    /// <param name="text">Lines that end in CRLF, folded anyhow.</param>
    public static string Folded(string text) =>
        string.Join(End, text.Replace(Fold, "", StringComparison.Ordinal).Split(End).Select(Line));

    private static string Line(string line)
    {
        var (folded, octets) = (new StringBuilder(line.Length), 0);
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                folded.Append(Fold);
                octets = 1;
            }
            folded.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }
        return folded.ToString();
    }
}
