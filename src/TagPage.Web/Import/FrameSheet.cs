using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Frames;
using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>frames.csv, both ways: what the catalogue writes is what it reads.</summary>
internal static class FrameSheet
{
    public const string File = "frames.csv";

    private static readonly Column<string> Name = new("frame", Kinds.Line(80), "Maker and model, as in rackets.csv.") { Needed = true };
    private static readonly Column<Sport?> Sport = new("sport", Kinds.OneOf<Sport>(), "What it is played for.") { Needed = true };
    private static readonly Column<int?> Mains = new("mains", Kinds.Whole(ImportLimits.LeastPattern, ImportLimits.MostPattern), "Number of main strings.");
    private static readonly Column<int?> Crosses = new("crosses", Kinds.Whole(ImportLimits.LeastPattern, ImportLimits.MostPattern), "Number of cross strings.");
    private static readonly Column<string> Skipped = new("skipped_holes", Kinds.Line(120), "Holes that the mains skip, in your own shorthand.");
    private static readonly Column<string> TieOffs = new("tie_offs", Kinds.Line(120), "Where the knots go.");
    private static readonly Column<decimal?> Least = new("least_tension", Kinds.Number(1, 100, 2), "The lowest tension printed on the frame.");
    private static readonly Column<decimal?> Most = new("most_tension", Kinds.Number(1, 100, 2), "The highest tension printed on the frame.");
    private static readonly Column<TensionUnit?> Unit = new("tension_unit", Kinds.OneOf<TensionUnit>(), "Empty means the shop’s own unit.");
    private static readonly Column<string> Note = new("note", Kinds.Note(ImportLimits.Note), "Only the shop sees it.");

    public static Sheet Sheet { get; } = new(File, "What you know about stringing a frame. A frame already in the catalogue, by sport and name, stays as it is.",
        [Name, Sport, Mains, Crosses, Skipped, TieOffs, Least, Most, Unit, Note]);

    public static void Read(SheetRow row, ImportContext context)
    {
        var frame = new FrameRow
        {
            Line = row.Line,
            Name = row.Get(Name) ?? "",
            Sport = row.Get(Sport) ?? default,
            Mains = row.Get(Mains),
            Crosses = row.Get(Crosses),
            SkippedHoles = row.Get(Skipped) ?? "",
            TieOffs = row.Get(TieOffs) ?? "",
            Least = row.Get(Least),
            Most = row.Get(Most),
            TensionUnit = row.Get(Unit) ?? context.Shop.TensionUnit,
            Note = row.Get(Note) ?? "",
        };
        context.Batch.Frames.Add(frame);
        if (frame.Least > frame.Most)
            row.Refuse(Most, "The highest tension is below the lowest. Correct one of them.");
        if (frame.Name.Length > 0 && context.LineBefore(row, $"frame {frame.Sport} {frame.Key}") is { } line)
            row.Refuse(Name, $"Line {line} already has this frame. Remove one of them.");
    }

    public static byte[] Write(IEnumerable<FrameStore.Row> frames) => Sheet.Write(frames.Select(frame => (IReadOnlyList<object?>)
    [
        frame.Name, Kinds.NameOf(frame.Sport), frame.PatternMains, frame.PatternCrosses, frame.SkippedHoles, frame.TieOffs,
        frame.LeastTension, frame.MostTension, Kinds.NameOf(frame.TensionUnit), frame.Note,
    ]));
}
