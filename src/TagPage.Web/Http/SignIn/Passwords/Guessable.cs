using System.Reflection;

namespace TagPage.Web.Http.SignIn.Passwords;

/// <summary>
/// Recognises passwords made only of the most common pieces: words everybody tries, rows of the keyboard, years,
/// repeats, the shop's and the owner's own name. Covers all lists of common passwords by rule instead of by entry;
/// the pieces are common knowledge, from no published list.
/// </summary>
public static class Guessable
{
    public const string Sentence = "This password is easy to guess. Use words that have nothing to do with you, the shop or the sport.";

    /// <summary>So many different letters and digits must be left when the common pieces are taken out.</summary>
    private const int EnoughLeft = 5;

    private const int ShortestRun = 4;

    private static readonly string[] Rows =
    [
        "abcdefghijklmnopqrstuvwxyz", "qwertyuiop", "qwertzuiop", "azertyuiop", "asdfghjkl", "zxcvbnm", "yxcvbnm",
        "01234567890123456789", "1qaz2wsx3edc4rfv5tgb6yhn7ujm8ik9ol0p", "1q2w3e4r5t6y7u8i9o0p", "q1w2e3r4t5y6u7i8o9p0",
    ];

    private static readonly string[] Runs = [.. Rows.Concat(Rows.Select(Reversed))];

    private static readonly string[] Words = [.. Read().OrderByDescending(w => w.Length)];

    /// <param name="password">As typed.</param>
    /// <param name="ownNames">Names that anybody can know: the sign-in name, the shop's.</param>
    public static bool IsEasy(string password, params string[] ownNames)
    {
        var pieces = ownNames.SelectMany(PiecesOf).Concat(Words).ToArray();
        return new[] { Plain(password), Plain(WithoutLookAlikes(password)) }.Any(text => Left(text, pieces) < EnoughLeft);
    }

    private static int Left(string text, string[] pieces)
    {
        foreach (var piece in pieces)
            text = text.Replace(piece, " ", StringComparison.Ordinal);
        return WithoutRuns(text).Where(c => c != ' ').Distinct().Count();
    }

    private static string WithoutRuns(string text)
    {
        for (var start = 0; start + ShortestRun <= text.Length; start++)
        {
            var length = RunAt(text, start);
            if (length >= ShortestRun)
                text = text[..start] + " " + text[(start + length)..];
        }
        return text;
    }

    private static int RunAt(string text, int start)
    {
        var length = 0;
        while (start + length < text.Length && Runs.Any(r => r.Contains(text.Substring(start, length + 1), StringComparison.Ordinal)))
            length++;
        return length;
    }

    private static IEnumerable<string> PiecesOf(string name) =>
        name.Split([' ', '-', '.', '_', '@', '’', '\''], StringSplitOptions.RemoveEmptyEntries).Select(Plain).Where(p => p.Length >= 3);

    private static string Plain(string text) => string.Concat(text.ToLowerInvariant().Where(char.IsLetterOrDigit));

    private static string WithoutLookAlikes(string text) => string.Concat(text.Select(c => c switch
    {
        '0' => 'o',
        '1' or '!' or '|' => 'i',
        '3' or '€' => 'e',
        '4' or '@' => 'a',
        '5' or '$' => 's',
        '7' => 't',
        _ => c,
    }));

    private static string Reversed(string row) => string.Concat(row.Reverse());

    private static string[] Read()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("TagPage.Web.Http.SignIn.Passwords.pieces.txt")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
    }
}
