using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.DueDates;
using TagPage.Records.Jobs;
using TagPage.Records.Readings;
using TagPage.Records.Storage;

namespace TagPage.Web.Words;

/// <summary>What is odd, as the questions for the shop.</summary>
public static class ShopQuestions
{
    /// <exception cref="ArgumentOutOfRangeException">Something the shop is never asked.</exception>
    public static string Of(Oddity odd) => odd switch
    {
        TensionUnusual { Tension: var tension } unusual => Of(unusual.Sport, tension),
        OnBenchAlready { Ticket: var ticket } =>
            $"This racket is on the bench already, with ticket {ticket}. Change that ticket, or tick below to open a second one.",
        ReadBeforeStrung before => $"{Formats.Day(before.Day)} is before these strings went in, {Formats.Day(before.StrungOn)}. Correct it, or tick below to keep it.",
        ReadInFuture { Day: var day } => $"{Formats.Day(day)} is in the future. Correct it, or tick below to keep it.",
        ReadAfterEnd { EndedOn: var ended } => $"These strings came out on {Formats.Day(ended)}. Correct the day, or tick below to keep it.",
        ReadOnOther { First: var first } =>
            $"Right after stringing it was read on {first}. Two instruments cannot be compared, so nothing is learned from this reading. Choose the first one, or tick below to keep it.",
        TensionGained gained =>
            $"That is {Percent(gained.Percent)} % more tension than right after stringing ({Formats.Number(gained.First)}), and strings do not gain any. Read again without dampener, or tick below to keep it.",
        ReadingDoubtful doubt =>
            $"{Formats.Number(doubt.First)} before, {Formats.Number(doubt.Value)} now: is that right? It lies far from what was expected of these strings. Read again without dampener, or tick below to keep it; it teaches nothing until you say that it counts.",
        TensionGone gone =>
            $"That is {Percent(gone.Percent)} % less tension than right after stringing ({Formats.Number(gone.First)}). Read again without dampener, or tick below to keep it.",
        _ => throw new ArgumentOutOfRangeException(nameof(odd), odd.GetType().Name, "No words for this question."),
    };

    private static string Of(Sport sport, Tension tension)
    {
        var facts = SportFacts.Of(sport);
        var (low, high) = (JobRefusalWords.In(facts.UsualMinLb, tension.Unit), JobRefusalWords.In(facts.UsualMaxLb, tension.Unit));
        return $"{tension} is unusual: {EnglishNames.Of(sport)} is mostly strung between {low} and {high} {EnglishNames.Of(tension.Unit)}."
            + (tension.In(TensionUnit.Lb) > facts.UsualMaxLb
                ? " Above the range printed on the frame it can crack, and the maker's warranty can be void: ask the maker."
                : "");
    }

    private static string Percent(double share) => Formats.Number((decimal)Math.Round(share, 1));
}
