using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Clients;
using TagPage.Records.DueDates;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Rackets;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Visits;

namespace TagPage.Web.Words;

/// <summary>What is odd, as the questions for the shop.</summary>
public static class ShopQuestions
{
    /// <exception cref="ArgumentOutOfRangeException">Something the shop is never asked.</exception>
    public static string Of(Oddity odd) => odd switch
    {
        TensionUnusual { Tension: var tension } unusual => Of(unusual.Sport, tension),
        TensionOutOfRange far => FrameWords.Of(far),
        PaidPriceChanges changes => PriceWords.Of(changes),
        BilledPriceChanges { Ticket: var ticket, Bill: var bill } =>
            $"Ticket {ticket} is on bill {bill}, which keeps its amounts. To bill the new price, cancel that bill afterwards and write it again. Correct the price, or tick below to change it.",
        OnBenchAlready { Ticket: var ticket } =>
            $"This racket is on the bench already, with ticket {ticket}. Change that ticket, or tick below to open a second one.",
        SoldButBrought => "You sell this string, but it is said to come from the client: then it costs nothing and takes nothing from the stock. Choose the shop, or tick below to keep it.",
        NotCollectedYet { Ticket: var ticket } =>
            $"Ticket {ticket} for this racket is still ready to collect. Hand it out first, or tick below to open a second one.",
        OtherPlayers { Player: var player } => $"That racket is {player}’s. Price and payment go there too. Choose another racket, or tick below to move the ticket.",
        ReadBeforeStrung before => $"{Formats.Day(before.Day)} is before these strings went in, {Formats.Day(before.StrungOn)}. Correct it, or tick below to keep it.",
        CurrencyChanges { Was: var was, Is: var now } =>
            $"Prices, payments and bills on file are in {was} and would all read as {now}: nothing is converted. Choose {was}, or tick below to change it.",
        VisitSameDay { Ticket: var waits, On: null } => $"Ticket {waits}, a visit of this racket, waits on the bench already. To take it in once more, tick below.",
        VisitSameDay { Ticket: var ticket, On: var on } =>
            $"Ticket {ticket} is a visit of this racket on {Formats.Day(on)} already. To note another one of that day, tick below.",
        StrungSameDay { Ticket: var ticket, On: var on } =>
            $"Ticket {ticket} was strung on {Formats.Day(on)} too, so its strings would not have lasted a day. Correct the day, or tick below to keep it.",
        PromisedClosed closed => $"{Shut(closed)} Promise another day, or tick below to keep it.",
        ReadInFuture { Day: var day } => $"{Formats.Day(day)} is in the future. Correct it, or tick below to keep it.",
        ReadAfterEnd { EndedOn: var ended } => $"These strings came out on {Formats.Day(ended)}. Correct the day, or tick below to keep it.",
        ReadOnOther { First: var first } =>
            $"Right after stringing it was read on {first}. Two instruments cannot be compared, so nothing is learned from this reading. Choose the first one, or tick below to keep it.",
        TensionGained gained =>
            $"That is {Percent(gained.Percent)} % more tension than right after stringing ({Formats.Number(gained.First)}), and strings do not gain tension. Read again without the dampener, or tick below to keep it.",
        ReadingFar far =>
            $"{Formats.Number(far.Value)} is far from {Formats.Number(far.Usual)}, which {(far.Instrument is null ? "was read on this racket" : $"is usual on {far.Instrument}")}. Check the number and the instrument, or tick below to keep it.",
        LaterReadsMore more =>
            $"These strings read {Formats.Number(more.Later)} later, which would be more tension than right after stringing, and strings do not gain tension. Check both numbers, or tick below to keep this one.",
        ReadingDoubtful doubt =>
            $"{Formats.Number(doubt.First)} before, {Formats.Number(doubt.Value)} now: is that right? It is far from what was expected of these strings. Read again without the dampener, or tick below to keep it; nothing is learned from it until you say that it counts.",
        TensionGone gone =>
            $"That is {Percent(gone.Percent)} % less tension than right after stringing ({Formats.Number(gone.First)}). Read again without the dampener, or tick below to keep it.",
        AddressUnproven { Answer: var answer } => $"{AddressWords.Finding(answer)} {AddressWords.Advice(answer)}",
        AddressNotHttps => "It is not https: phones show a warning, clients’ own pages do not open, and others on the network can read what you send. Enter an https address, or tick below to keep it.",
        AddressForLife => "It is for life: every label you print carries it for as long as the label sticks. Tick below if it is yours to keep.",
        AddressChanges { Old: var old, InUse: var inUse, Blank: var blank } =>
            $"{Tags(inUse)} in use and {Tags(blank)} not linked yet carry {old} for life, or will once they are stuck on. They work only as long as {old} keeps leading here as well. Tick below if it will.",
        PhoneOnFile { Name: var name } => $"{name} already has this phone number. Open that record, or tick below to add a second client.",
        MailOnFile { Name: var name } => $"{name} already has this email address. Open that record, or tick below to add a second client.",
        FrameTooLong frame =>
            $"{SpecQuestions.TooLong($"{Formats.Number(frame.LengthCm)} cm", frame.Sport, limits => $"{Formats.Number(limits.MaxLengthMm / 10m)} cm")} Correct it, or tick below to keep it.",
        HeadUnusual head => $"A head of {Formats.Number(head.Size)} {Formats.AreaUnit(head.Unit)} is unusual. Check the unit, or tick below to keep it.",
        SoldWithTag => "A sold racket’s tag stops working for good. Choose another state, or tick below to retire it.",
        ShiftLong { Minutes: var minutes, Usual: var usual } => $"That is {Math.Abs(minutes)} minutes, more than {usual / 60} hours. Correct it, or tick below to shift all times by it.",
        ShiftIntoPast { Numbers: var numbers } => $"{EventRefusalWords.Listed(numbers)} would be promised for a time that has passed. Correct it, or tick below to shift all times.",
        _ when SpecQuestions.Of(odd) is { } question => question,
        _ => throw new ArgumentOutOfRangeException(nameof(odd), odd.GetType().Name, "No words for this question."),
    };

    /// <summary>That the promised day is a closed one, and which comes next.</summary>
    public static string Shut(PromisedClosed closed) => $"The shop is closed on {Formats.Weekday(closed.Day)}{(closed.Note.Length > 0 ? $" ({closed.Note})" : "")}."
        + (closed.Next is { } next ? $" It is open again on {Formats.Weekday(next)}." : "");

    private static string Tags(int number) => number == 1 ? "1 tag" : $"{number} tags";

    private static string Of(Sport sport, Tension tension)
    {
        var facts = SportFacts.Of(sport);
        var (low, high) = (JobRefusalWords.In(facts.UsualMinLb, tension.Unit), JobRefusalWords.In(facts.UsualMaxLb, tension.Unit));
        return $"{tension} is unusual: {EnglishNames.Of(sport)} is mostly strung between {low} and {high} {EnglishNames.Of(tension.Unit)}."
            + (tension.In(TensionUnit.Lb) > facts.UsualMaxLb
                ? " Above the range printed on the frame it can crack, and the maker’s warranty can be void: ask the maker."
                : "");
    }

    private static string Percent(double share) => Formats.Number((decimal)Math.Round(share, 1));
}
