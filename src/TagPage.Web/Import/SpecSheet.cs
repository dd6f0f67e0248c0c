using TagPage.Core.Sports;
using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>specs.csv</summary>
internal static class SpecSheet
{
    public const string File = "specs.csv";

    private static readonly Column<string> Racket = new("racket", CellKinds.Key, "The key of a racket.") { Needed = true };
    private static readonly Column<DateOnly?> MeasuredOn = new("measured_on", Kinds.Day, "The day it was measured.") { Needed = true };
    private static readonly Column<decimal?> Weight = new("weight_g", Kinds.Number(50, 500, 2), "Weight in g.");
    private static readonly Column<decimal?> Balance = new("balance_mm", Kinds.Number(100, 500, 2), "Balance point in mm from the butt.");
    private static readonly Column<decimal?> SwingWeight = new("swing_weight", Kinds.Number(30, 500, 2), "In kg·cm².");
    private static readonly Column<decimal?> Stiffness = new("stiffness", Kinds.Number(0, 200, 2), "On the scale named beside it.");
    private static readonly Column<string> StiffnessScale = new("stiffness_scale", Kinds.Line(20), "Which scale that is.");
    private static readonly Column<decimal?> Length = new("length_mm", Kinds.Number(SportFacts.MinLengthMm, SportFacts.MaxLengthMm, 1), "Overall length in mm.");
    private static readonly Column<bool?> Strung = new("strung", Kinds.YesNo, "Whether it was strung when measured. Empty means yes.");
    private static readonly Column<bool?> GripOn = new("grip_on", Kinds.YesNo, "Whether the grip was on. Empty means yes.");
    private static readonly Column<bool?> DampenerOn = new("dampener_on", Kinds.YesNo, "Whether a dampener was on. Empty means no.");
    private static readonly Column<string> Note = new("note", Kinds.Note(ImportLimits.Note), "Only the shop sees it.");

    private static readonly Column[] Measured = [Weight, Balance, SwingWeight, Stiffness, Length];

    public static Sheet Sheet { get; } = new(File, "What a racket measured, and when. You can leave this file out.",
        [Racket, MeasuredOn, Weight, Balance, SwingWeight, Stiffness, StiffnessScale, Length, Strung, GripOn, DampenerOn, Note]);

    public static void Read(SheetRow row, ImportContext context)
    {
        context.Batch.Specs.Add(new SpecRow
        {
            Line = row.Line,
            Racket = context.Batch.Rackets.Find(row, Racket, RacketSheet.File),
            MeasuredOn = context.Past(row, MeasuredOn) ?? default,
            WeightG = row.Get(Weight),
            BalanceMm = row.Get(Balance),
            SwingWeight = row.Get(SwingWeight),
            Stiffness = row.Get(Stiffness),
            StiffnessScale = row.Get(StiffnessScale) ?? "",
            LengthMm = row.Get(Length),
            Strung = row.Get(Strung) ?? true,
            GripOn = row.Get(GripOn) ?? true,
            DampenerOn = row.Get(DampenerOn) ?? false,
            Note = row.Get(Note) ?? "",
        });
        if (Measured.All(row.IsEmpty))
            row.Refuse(Weight, "Nothing was measured here. Enter at least one number, or remove the line.");
        if (!row.IsEmpty(Stiffness) && row.IsEmpty(StiffnessScale))
            row.Refuse(StiffnessScale, "Name the scale of the stiffness; numbers of different scales cannot be compared.");
    }
}
