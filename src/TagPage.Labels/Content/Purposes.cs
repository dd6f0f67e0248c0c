namespace TagPage.Labels.Content;

/// <summary>What each kind of label says. All values come ready to print; empty ones are left out.</summary>
public static class Purposes
{
    private const int AddressRank = 8;

    /// <summary>After a job: what was done.</summary>
    public static LabelContent Done(DoneFacts facts, LabelTag? tag)
    {
        LabelLine whose = Whose(facts.Whose, 6) with { MayStandBehind = true }, own = Own(facts.OwnLine, 5);
        LabelLine[] dates = [new("the date strung", facts.Strung) { Rank = 3, IsExtra = true, Caption = Before("Strung", facts.Strung), Stays = true, IsFollowed = true }];
        List<LabelPanel> panels =
        [
            new(Large("the tension", facts.Tension, 0) is { } tension ? tension with { Unit = facts.Unit } : null, [.. Strings(facts.Mains, facts.Crosses, 2), Reading(facts)]),
            new(Large("the restring-by date", facts.RestringBy, 1) is { } date ? date with { Caption = "Restring by" } : null,
                facts.NameLeads ? dates : [.. dates, whose, own]),
        ];
        if (facts.NameLeads)
            panels.Insert(0, new(Large("whose it is", facts.Whose, 0) is { } name ? name with { MayBeCut = true } : null, [own]));
        return new LabelContent(panels, tag);
    }

    /// <summary>How to return it: the same for everybody's racket.</summary>
    public static LabelContent Return(string words, LabelTag tag) => new(
    [
        new(null, [new LabelLine("the words", words) { Rank = 1, IsBold = true, MayBeCut = true, Parts = LabelLine.Words(words), WithoutSquare = "Lost racket? Open this address:" }]),
    ], tag with { Purpose = "", InWords = true });

    /// <summary>What it measures.</summary>
    public static LabelContent Measures(MeasureFacts facts, LabelTag? tag) => new(
    [
        new(null,
        [
            new LabelLine("the racket’s number", facts.Racket) { Rank = 0, IsBold = true, IsFollowed = true },
            Measured("weight", facts.Weight, 1),
            Measured("balance", facts.Balance, 2),
            Measured("swing weight", facts.SwingWeight, 3),
            Measured("stiffness", facts.Stiffness, 4) with { IsExtra = true },
            new LabelLine("the date measured", facts.Measured) { Rank = 5, IsExtra = true, Parts = Clauses(facts.Measured) },
            Own(facts.OwnLine, 6),
            Whose(facts.Whose, 7) with { MayStandBehind = true },
        ]),
    ], tag);

    /// <summary>On racket or bag while its ticket waits.</summary>
    public static LabelContent Waiting(WaitingFacts facts, LabelTag? tag) => new(
    [
        new(Large("the ticket’s number", facts.Ticket, 0) is { } number ? number with { Caption = "Ticket" } : null,
        [
            new LabelLine("the tension", facts.Tension) { Rank = 2, IsBold = true, Stays = true },
            new LabelLine("what is to be done", facts.Work) { Rank = 2, IsBold = true, MayBeCut = true, Parts = LabelLine.Words(facts.Work) },
            Whose(facts.Whose, 5),
        ]),
        new(Large("the day promised", facts.Promised, 1) is { } day ? day with { Caption = "Promised" } : null,
        [
            .. Strings(facts.Mains, facts.Crosses, 3),
            new LabelLine("the wish", facts.Wish) { Rank = 4, MayBeCut = true, IsExtra = true, Parts = LabelLine.Words(facts.Wish) },
        ]),
    ], tag);

    /// <summary>An event's label on the racket.</summary>
    public static LabelContent DeskRacket(DeskFacts facts, LabelTag? tag) => new(
    [
        new(new Figure("the desk number", facts.Number) { Rank = 0, IsTall = true }, []),
        new(Large("the tension", facts.Tension, 1),
        [
            new LabelLine("the string", facts.Strings) { Rank = 2, MayBeCut = true, Parts = Strings(facts.Strings) },
            new LabelLine("the date and time", facts.When) { Rank = 3, IsExtra = true },
            Whose(facts.Name, 4),
        ]),
    ], tag);

    /// <summary>An event's label on the bag: the same number and tension, larger.</summary>
    public static LabelContent DeskBag(DeskFacts facts) => new(
    [
        new(new Figure("the desk number", facts.Number) { Rank = 0, IsTall = true }, []),
        new(new Figure("the tension", facts.Tension) { Rank = 1, IsTall = true, IsSecond = true }, []),
    ]);

    /// <summary>Up to three lines of any words.</summary>
    public static LabelContent Free(IEnumerable<string> lines) => new(
        [new(null, [.. lines.Select((line, i) => new LabelLine($"line {i + 1}", line) { Rank = i, MayBeCut = true, IsBold = i == 0 })])])
    { Grows = true };

    /// <summary>A tag that belongs to no racket yet.</summary>
    public static LabelContent Blank(LabelTag tag) => new([], tag with { InWords = true });

    /// <summary>The address a person types, and what the square is for.</summary>
    internal static IReadOnlyList<LabelLine> Address(LabelTag tag, bool hasSquare)
    {
        var typed = new LabelLine("the address and the code", string.Concat(tag.Typed))
        {
            Rank = AddressRank,
            Ends = !hasSquare,
            Parts = tag.Typed,
            Shorter = [tag.Code.Display],
            Stays = true,
        };
        return hasSquare
            ? [new LabelLine("the line that says what the square is for", tag.Purpose) { Rank = AddressRank + 1, IsBold = true, Parts = LabelLine.Words(tag.Purpose) }, typed]
            : [typed];
    }

    private static IEnumerable<LabelLine> Strings(StringFact mains, StringFact crosses, int rank)
    {
        var areTwo = mains.Text.Length > 0 && crosses.Text.Length > 0;
        yield return Of(mains, "") with { GoesOn = areTwo };
        // The stroke stands with the second, also where that is in a row or a column of its own.
        yield return Of(crosses, areTwo ? "/ " : "") with { Follows = true };

        LabelLine Of(StringFact fact, string start) =>
            new("the string", fact.Text.Length == 0 ? "" : start + fact.Text) { Rank = rank, MayBeCut = true, KeptEnd = $" {fact.Gauge}".TrimEnd(), Stays = true };
    }

    // The stroke stands with the second.
    private static IReadOnlyList<string> Strings(string text)
    {
        var stroke = text.IndexOf(" / ", StringComparison.Ordinal);
        return stroke < 0 ? [] : [text[..(stroke + 1)], text[(stroke + 1)..]];
    }

    private static LabelLine Reading(DoneFacts facts) =>
        new("the reading", facts.Reading.Length == 0 || facts.Instrument.Length == 0 ? facts.Reading : $"{facts.Reading} on {facts.Instrument}")
        {
            Rank = 4,
            IsExtra = true,
            Shorter = facts.Reading.Length == 0 ? [] : [$"reading {facts.Reading}"],
        };

    private static LabelLine Measured(string what, string value, int rank) =>
        new($"the {what}", value) { Rank = rank, IsBold = true, Caption = Before(what, value) };

    private static Figure? Large(string name, string value, int rank) => value.Trim().Length == 0 ? null : new Figure(name, value) { Rank = rank };

    private static LabelLine Own(string text, int rank) => new("the player’s line", text) { Rank = rank, MayBeCut = true, IsExtra = true };

    private static LabelLine Whose(string text, int rank) => new("whose it is", text) { Rank = rank, MayBeCut = true, IsBold = true, IsExtra = true };

    // Each with the comma that ends it: "26 Nov 2026, ", "unstrung".
    private static IReadOnlyList<string> Clauses(string text)
    {
        var parts = text.Split(", ");
        return [.. parts.Select((part, i) => i < parts.Length - 1 ? part + ", " : part)];
    }

    private static string Before(string words, string value) => value.Length == 0 ? "" : words;
}
