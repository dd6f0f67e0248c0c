namespace TagPage.Core.Players;

/// <summary>What a label may say about whose racket it is on.</summary>
public static class WhoseOnLabel
{
    /// <summary>Characters of a given name or nickname that a guardian agreed to.</summary>
    public const int LongestAgreedName = 20;

    /// <summary>
    /// An adult's name; of a junior what the guardian agreed to, else "Racket 2" and the ticket or desk number.
    /// A label is read by whoever stands beside the court.
    /// </summary>
    /// <param name="junior">Whether a junior plays with it.</param>
    /// <param name="name">The player's name on file.</param>
    /// <param name="agreedName">A given name or nickname the guardian agreed to; empty for none.</param>
    /// <param name="racket">The racket's number with its player.</param>
    /// <param name="number">Of the ticket or the desk, null where there is none.</param>
    public static string Of(bool junior, string name, string agreedName, int racket, long? number) => (junior, agreedName) switch
    {
        (false, _) => name,
        (true, { Length: > 0 }) => agreedName,
        _ => number is { } known ? $"Racket {racket}, no. {known}" : $"Racket {racket}",
    };

    /// <summary>The name alone, for what says the racket's number itself; empty for a junior whose guardian agreed to none.</summary>
    public static string Name(bool junior, string name, string agreedName) => junior ? agreedName : name;

    /// <summary>Whether an agreed name gives away more than a given name or nickname: any later part of the full name.</summary>
    public static bool GivesAwayMore(string agreedName, string name)
    {
        var parts = name.Split([' ', Text.PersonName.Tie, '-'], StringSplitOptions.RemoveEmptyEntries);
        var agreed = agreedName.Split([' ', Text.PersonName.Tie, '-'], StringSplitOptions.RemoveEmptyEntries);
        return parts.Skip(1).Any(part => agreed.Contains(part, StringComparer.CurrentCultureIgnoreCase));
    }
}
