namespace TagPage.Records.Reminders;

/// <summary>What a client can say about a racket that is due.</summary>
public enum AnswerKind { Same, Different, NotYet, Elsewhere, Gone }

/// <summary>Who gave an answer; the owner notes what was said on the phone.</summary>
public enum AnsweredBy { Client, Owner }

/// <summary>One racket's answer, read and found to be whole.</summary>
public sealed record RacketAnswer(long RacketId, AnswerKind Kind)
{
    public const int MostWeeks = 52;
    public const int LongestStrings = 80;
    public const int LongestTension = 40;
    public const int LongestNote = 400;

    /// <summary>Of <see cref="AnswerKind.Different"/>; likewise the tension and the note.</summary>
    public string Strings { get; init; } = "";
    public string Tension { get; init; } = "";
    public string Note { get; init; } = "";

    /// <summary>Of <see cref="AnswerKind.NotYet"/>.</summary>
    public int? Weeks { get; init; }

    /// <summary>Of <see cref="AnswerKind.Elsewhere"/>.</summary>
    public DateOnly? ElsewhereOn { get; init; }

    /// <summary>What should be different, as the bench reads it.</summary>
    public string AskedWords => string.Join('\n', new[]
    {
        Strings.Length > 0 ? "strings: " + Strings : "",
        Tension.Length > 0 ? "tension: " + Tension : "",
        Note,
    }.Where(part => part.Length > 0));
}
