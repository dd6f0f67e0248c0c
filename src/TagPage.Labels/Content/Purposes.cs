namespace TagPage.Labels.Content;

/// <summary>What each kind of label says, most important first. All values come ready to print; empty ones are left out.</summary>
public static class Purposes
{
    private const double Large = 1.5;
    private const double Largest = 2.5;

    /// <summary>After a job: what was done.</summary>
    public static LabelContent Done(DoneFacts facts, LabelTag? tag) => new(
    [
        new LabelLine("the tension", facts.Tension) { Scale = Large },
        new LabelLine("the string", facts.Strings) { MayBeCut = true },
        new LabelLine("the restring-by date", Prefixed("Restring by ", facts.RestringBy)) { Shorter = Dated("By ", facts.RestringBy) },
        new LabelLine("the date strung", Prefixed("Strung ", facts.Strung)),
        new LabelLine("the reading", facts.Reading),
        .. Own(facts.OwnLine),
        new LabelLine("whose it is", facts.Whose) { MayBeCut = true },
    ], tag);

    /// <summary>How to return it: the same for everybody's racket.</summary>
    public static LabelContent Return(string words, LabelTag tag) => new(
        [new LabelLine("the words", words) { MayBeCut = true, WithoutSquare = "Lost racket? Open this address:" }], tag with { Purpose = "" });

    /// <summary>What it measures.</summary>
    public static LabelContent Measures(MeasureFacts facts, LabelTag? tag) => new(
    [
        new LabelLine("the racket's number", facts.Racket) { Scale = Large },
        new LabelLine("the weight", facts.Weight),
        new LabelLine("the balance", facts.Balance),
        new LabelLine("the swing weight", facts.SwingWeight),
        new LabelLine("the stiffness", facts.Stiffness),
        new LabelLine("the date measured", facts.Measured),
        .. Own(facts.OwnLine),
        new LabelLine("whose it is", facts.Whose) { MayBeCut = true },
    ], tag);

    /// <summary>An event's label on the racket.</summary>
    public static LabelContent DeskRacket(DeskFacts facts, LabelTag? tag) => new(
    [
        new LabelLine("the desk number", facts.Number) { Scale = Largest },
        new LabelLine("the tension", facts.Tension) { Scale = Large },
        new LabelLine("the string", facts.Strings) { MayBeCut = true },
        new LabelLine("the date and time", facts.When),
        new LabelLine("the name", facts.Name) { MayBeCut = true },
    ], tag);

    /// <summary>An event's label on the bag: the same number and tension, larger.</summary>
    public static LabelContent DeskBag(DeskFacts facts) => new(
    [
        new LabelLine("the desk number", facts.Number) { Scale = Largest },
        new LabelLine("the tension", facts.Tension) { Scale = Largest },
    ]);

    /// <summary>Up to three lines of any words.</summary>
    public static LabelContent Free(IEnumerable<string> lines) => new(
        [.. lines.Select((line, i) => new LabelLine($"line {i + 1}", line) { MayBeCut = true })]);

    /// <summary>A tag that belongs to no racket yet.</summary>
    public static LabelContent Blank(LabelTag tag) => new([], tag);

    private static IEnumerable<LabelLine> Own(string text) => [new LabelLine("the player's line", text) { MayBeCut = true }];

    private static string Prefixed(string prefix, string value) => value.Length == 0 ? "" : prefix + value;

    private static string[] Dated(string prefix, string value) => value.Length == 0 ? [] : [prefix + value];
}
