using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace TagPage.Core.Rackets;

/// <summary>
/// The short public note of a lost racket. Everybody reads it, so it must not say who somebody is or how to reach them.
/// The limits are the product's own.
/// </summary>
public static partial class LostNote
{
    /// <summary>Characters.</summary>
    public const int Longest = 140;

    /// <summary>A telephone number has at least this many digits; a house or court number has fewer.</summary>
    public const int FewestForbiddenDigits = 6;

    /// <summary>What is wrong with a note, or null where it can be shown to everybody.</summary>
    /// <param name="note">As typed.</param>
    /// <param name="names">Full names of people who must not be named: the client's and the players'.</param>
    public static LostNoteFault? Fault(string note, IEnumerable<string> names)
    {
        var plain = note.Normalize(NormalizationForm.FormKC);
        return note.Length > Longest ? LostNoteFault.TooLong
            : plain.Any(IsHidden) ? LostNoteFault.NotPlain
            : plain.Contains('@', StringComparison.Ordinal) ? LostNoteFault.MailSign
            : Link().IsMatch(plain) ? LostNoteFault.Link
            : plain.Count(char.IsDigit) >= FewestForbiddenDigits ? LostNoteFault.Digits
            : Names(plain, names) ? LostNoteFault.Name
            : null;
    }

    private static bool IsHidden(char c) => char.GetUnicodeCategory(c) is UnicodeCategory.Control or UnicodeCategory.Format;

    private static bool Names(string note, IEnumerable<string> names)
    {
        var text = Bare(note);
        var words = Words(text).ToHashSet(StringComparer.Ordinal);
        return names.SelectMany(NameWords).Any(name => Runs(name) ? text.Contains(name, StringComparison.Ordinal) : words.Contains(name));
    }

    /// <summary>"de" and "al" in a name stand in any sentence; where a name has capitals, only words that begin with one name somebody.</summary>
    private static IEnumerable<string> NameWords(string name)
    {
        var hasCapitals = name.Any(char.IsUpper);
        return Word().Matches(name.Normalize(NormalizationForm.FormC)).Select(m => m.Value).Where(w => !hasCapitals || !char.IsLower(w[0])).SelectMany(w => Words(Bare(w)));
    }

    /// <summary>Letters and digits alone count as a word; a single letter names nobody.</summary>
    private static IEnumerable<string> Words(string text) => Word().Matches(text).Select(m => m.Value).Where(w => w.Length > 1);

    /// <summary>Scripts without spaces between words: there a name is found within the text.</summary>
    private static bool Runs(string word) => word.Any(c => c >= '\u2E80');

    /// <summary>Without case and accents, so that Zeljko is Željko.</summary>
    private static string Bare(string text) =>
        string.Concat(text.Normalize(NormalizationForm.FormKD).Where(c => char.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark)).ToLowerInvariant();

    [GeneratedRegex(@"://|\bwww\.|\p{L}[\w-]*\.\p{L}{2,}|\b(https?|mailto|tel|sms):", RegexOptions.IgnoreCase)]
    private static partial Regex Link();

    [GeneratedRegex(@"[\p{L}\p{N}]+")]
    private static partial Regex Word();
}

public enum LostNoteFault { TooLong, NotPlain, MailSign, Link, Digits, Name }
