using TagPage.Core.Strings;
using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>strings.csv</summary>
internal static class StringSheet
{
    public const string File = "strings.csv";

    public static readonly Column<string> Name = new("name", Kinds.Line(60), "As you call it at the bench.") { Needed = true };
    public static readonly Column<Material?> Material = new("material", Kinds.OneOf<Material>(), "What it is made of.") { Needed = true };
    private static readonly Column<string> Key = new("string", CellKinds.Key, "A key of your own, used by jobs.csv.") { Needed = true };
    private static readonly Column<decimal?> Gauge = new("gauge_mm", Kinds.Number(ImportLimits.LeastGaugeMm, ImportLimits.MostGaugeMm, 3), "The diameter in mm.") { Needed = true };
    private static readonly Column<string> Note = new("note", Kinds.Note(ImportLimits.Note), "Only the shop sees it.");

    public static Sheet Sheet { get; } = new(File, "Your catalogue. A string the shop already has, by name and gauge, is not added again.",
        [Key, Name, Material, Gauge, Note]);

    public static void Read(SheetRow row, ImportContext context)
    {
        var kind = new StringRow
        {
            Line = row.Line,
            Name = row.Get(Name) ?? "",
            Material = row.Get(Material) ?? default,
            GaugeMm = row.Get(Gauge) ?? 0,
            Note = row.Get(Note) ?? "",
        };
        if (context.LineBefore(row, $"string {kind.Name} {kind.GaugeMm:0.###}") is { } line)
            row.Refuse(Name, $"Line {line} already has this name and gauge. Use its key in jobs.csv and remove this line.");
        context.Batch.Strings.Add(row, Key, kind);
    }
}
