using System.Collections.Concurrent;
using TagPage.Core.Tags;
using TagPage.Labels.Content;
using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;

namespace TagPage.Labels.Tests.Cast;

/// <summary>Invented labels of every purpose.</summary>
internal static class Samples
{
    public static readonly LabelTag Tag = new(TagCode.Parse("7K2M9Q4TXAV"), "https://tag.example", "Scan for this racket’s page");

    public static readonly DoneFacts Done = new()
    {
        Tension = "24 / 23",
        Unit = "lb",
        Mains = new StringFact("Rough poly", "1.25"),
        Crosses = new StringFact("Syngut", "1.30"),
        RestringBy = "14 Mar 2027",
        Strung = "26 Nov 2026",
        Reading = "62",
        Instrument = "the shop’s gauge",
        Whose = "Łukasz",
    };

    /// <summary>As most labels are: one string, no reading.</summary>
    public static readonly DoneFacts Plain = Done with { Tension = "52", Crosses = new StringFact("", ""), Reading = "", Instrument = "", Whose = "Racket 1, no. 1042" };

    public static readonly MeasureFacts Measures = new()
    {
        Racket = "Racket 2",
        Weight = "312.5 g",
        Balance = "324 mm",
        SwingWeight = "318 kg·cm²",
        Stiffness = "64",
        Measured = "26 Nov 2026, after customising",
    };

    public static readonly WaitingFacts Waiting = new()
    {
        Ticket = "1926",
        Promised = "1 Dec 2026",
        Tension = "24 / 23 lb",
        Mains = new StringFact("Rough poly", "1.25"),
        Crosses = new StringFact("Soft multi", "1.30"),
        Wish = "softer than last time",
        Whose = "Racket 2",
    };

    public static readonly DeskFacts Desk = new()
    {
        Number = "117",
        Tension = "24 / 23 lb",
        Strings = "Rough poly 1.25",
        When = "26 Nov 14:30",
        Name = "山田",
    };

    private static readonly ConcurrentDictionary<(LabelContent, LabelStock), Lazy<LaidLabel>> Laid = [];

    public static IReadOnlyList<(string Name, LabelContent Content)> Purposes { get; } =
    [
        ("done", Content.Purposes.Done(Done, Tag)),
        ("done, one string", Content.Purposes.Done(Plain, Tag)),
        ("done, name first", Content.Purposes.Done(Done with { NameLeads = true, OwnLine = "go low" }, Tag)),
        ("return", Content.Purposes.Return("Lost racket: scan to return it", Tag)),
        ("measures", Content.Purposes.Measures(Measures, Tag)),
        ("waiting", Content.Purposes.Waiting(Waiting, Tag)),
        ("desk racket", Content.Purposes.DeskRacket(Desk, Tag)),
        ("desk bag", Content.Purposes.DeskBag(Desk)),
        ("free", Content.Purposes.Free(["Good luck", "Δημήτρης", "Дмитрий"])),
        ("blank", Content.Purposes.Blank(Tag)),
    ];

    public static LabelContent Of(string name) => Purposes.Single(purpose => purpose.Name == name).Content;

    /// <summary>Laid out once for all tests: the same content, not made anew, on the same stock is the same label.</summary>
    public static LaidLabel Lay(LabelContent content, LabelStock stock) =>
        Laid.GetOrAdd((content, stock), key => new(() => Layouter.Lay(key.Item1, key.Item2))).Value;

    public static LabelStock Stock(double tape, int dpi) =>
        LabelStock.Usual with { Tape = Tape.Usual with { WidthMm = tape }, Printer = new Printer(1, dpi) };

    /// <summary>Every width and resolution on which a version 2 square is not refused.</summary>
    public static IEnumerable<LabelStock> StocksWithSquare =>
        from tape in Tape.Widths
        from dpi in (int[])[180, 300, 360]
        let stock = Stock(tape, dpi)
        where SquareFit.On(25, stock.Tape, stock.Printer, stock.Limits).IsPrinted
        select stock;
}
