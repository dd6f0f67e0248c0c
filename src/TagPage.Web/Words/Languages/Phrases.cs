using TagPage.Core.Text;

namespace TagPage.Web.Words;

/// <summary>
/// All that is said in one language, read from its JSON file. Every property is required, so a file with a missing or
/// an unknown key stops the program at its start. What is in braces is filled in by <see cref="Filling.Fill"/>.
/// </summary>
public sealed record Phrases
{
    public required TimePhrases Time { get; init; }
    public required TradePhrases Trade { get; init; }
    public required LifePhrases Life { get; init; }
    public required ReasonsPhrases Reasons { get; init; }
    public required TagPhrases Tag { get; init; }
    public required CodePhrases Code { get; init; }
    public required HomePhrases Home { get; init; }
    public required FoundPhrases Found { get; init; }
    public required ReminderPhrases Reminder { get; init; }
    public required StopPhrases Stop { get; init; }
    public required ReminderMailPhrases ReminderMail { get; init; }
    public required NoticePhrases Notice { get; init; }
    public required AnswerPhrases Answer { get; init; }
    public required LogPhrases Log { get; init; }
    public required ProblemPhrases Problem { get; init; }
}
