using System.Text;
using System.Text.RegularExpressions;
using TagPage.Records.Outbox;

namespace TagPage.Web.Mail;

/// <summary>
/// A mail or SMS as plain text. Mail programs make links out of what looks like an address, so addresses in values are
/// taken apart, and a value right behind an address does not become the end of it.
/// </summary>
public static partial class PlainMail
{
    /// <param name="text">What to write.</param>
    /// <param name="made">The address or the digits of a part that is made now; needed where the text has such parts.</param>
    public static string Of(MailText text, Func<MailPart, string>? made = null)
    {
        var written = new StringBuilder();
        foreach (var part in text.Parts)
        {
            var words = Of(part, made);
            if (part.Kind is PartKind.Typed or PartKind.Quoted && words.Length > 0 && !char.IsWhiteSpace(words[0]) && EndsInAddress(written))
                written.Append(' ');
            written.Append(words);
        }
        return written.ToString();
    }

    private static string Of(MailPart part, Func<MailPart, string>? made) => part.Kind switch
    {
        PartKind.Words => part.Text,
        PartKind.Typed => Unlinked(part.Text),
        PartKind.Quoted => "> " + Unlinked(part.Text).Replace("\n", "\n> ", StringComparison.Ordinal),
        _ => made!(part),
    };

    /// <summary>What a value looks like wherever it is shown.</summary>
    public static string Unlinked(string typed) => Www().Replace(typed.Replace("://", "[:]//", StringComparison.Ordinal), "$1[.]");

    private static bool EndsInAddress(StringBuilder written)
    {
        var tail = written.ToString(Math.Max(0, written.Length - LongestAddress), Math.Min(written.Length, LongestAddress));
        return Address().IsMatch(tail);
    }

    /// <summary>Characters; what is longer than browsers take need not be found.</summary>
    private const int LongestAddress = 2000;

    [GeneratedRegex(@"\b(www)\.", RegexOptions.IgnoreCase)]
    private static partial Regex Www();

    [GeneratedRegex(@"(://|\bwww\.)\S*$", RegexOptions.IgnoreCase)]
    private static partial Regex Address();
}
