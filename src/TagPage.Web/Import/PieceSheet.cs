using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Web.Csv;
using TagPage.Web.Words;

namespace TagPage.Web.Import;

/// <summary>pieces.csv</summary>
internal static class PieceSheet
{
    public const string File = "pieces.csv";

    // As many as a double has, which keeps what was typed.
    internal const int Places = 20;

    private const int MostSpecs = 100_000;

    private static readonly Column<string> Racket = new("racket", CellKinds.Key, "The key of a racket.") { Needed = true };
    private static readonly Column<string> Place = new("place", Kinds.Line(40), "Where it is, in words.") { Needed = true };
    private static readonly Column<decimal?> At = new("at", Kinds.Number(0, 800, Places), "Distance from the butt, in the unit beside it.") { Needed = true };
    private static readonly Column<decimal?> OffAxis = new("off_axis", Kinds.Number(0, 200, Places), "Distance of each side from the middle. Empty means 0.");
    private static readonly Column<LengthUnit?> Unit = new("length_unit", Kinds.OneOf<LengthUnit>(), "Of both distances. Empty means cm.");
    private static readonly Column<bool?> OnStrings = new("on_strings", Kinds.YesNo, "Whether it is on the strings. Empty means no.");
    private static readonly Column<decimal?> Weight = new("weight", Kinds.Number(0, 100, Places), "What it weighs, both sides together.") { Needed = true };
    private static readonly Column<WeightUnit?> WeightUnit = new("weight_unit", Kinds.OneOf<WeightUnit>(), "Of the weight. Empty means g.");
    private static readonly Column<AddedMaterial?> Material = new("material", Kinds.OneOf<AddedMaterial>(), "What it is made of.") { Needed = true };
    private static readonly Column<DateOnly?> AddedOn = new("added_on", Kinds.Day, "The day it was put on, or seen.") { Needed = true };
    private static readonly Column<DateOnly?> RemovedOn = new("removed_on", Kinds.Day, "The day it came off. Empty means it is on.");
    private static readonly Column<bool?> ByPlan = new("by_plan", Kinds.YesNo, "Whether a plan put it on, whose spec counts it. Empty means no.");
    private static readonly Column<int?> NotedAfter = new("noted_after", Kinds.Whole(0, MostSpecs), "How many specs the racket had when it was noted. Empty means 0.");
    private static readonly Column<bool?> OffByPlan = new("off_by_plan", Kinds.YesNo, "Whether a plan took it off. Empty means no.");
    private static readonly Column<int?> OffNotedAfter = new("off_noted_after", Kinds.Whole(0, MostSpecs), "How many specs the racket had then. Empty means 0.");

    public static Sheet Sheet { get; } = new(File, "What is or was added to a frame. You can leave this file out.",
        [Racket, Place, At, OffAxis, Unit, OnStrings, Weight, WeightUnit, Material, AddedOn, RemovedOn, ByPlan, NotedAfter, OffByPlan, OffNotedAfter]);

    public static void Read(SheetRow row, ImportContext context)
    {
        var piece = new PieceRow
        {
            Line = row.Line,
            Racket = context.Batch.Rackets.Find(row, Racket, RacketSheet.File),
            Place = row.Get(Place) ?? "",
            At = row.Get(At) ?? 0,
            OffAxis = row.Get(OffAxis) ?? 0,
            LengthUnit = row.Get(Unit) ?? LengthUnit.Cm,
            OnStrings = row.Get(OnStrings) ?? false,
            Weight = row.Get(Weight) ?? 0,
            WeightUnit = row.Get(WeightUnit) ?? default,
            Material = row.Get(Material) ?? default,
            AddedOn = context.Past(row, AddedOn) ?? default,
            RemovedOn = context.Past(row, RemovedOn),
            ByPlan = row.Get(ByPlan) ?? false,
            NotedAfter = row.Get(NotedAfter) ?? 0,
            OffByPlan = row.Get(OffByPlan) ?? false,
            OffNotedAfter = row.Get(OffNotedAfter) ?? 0,
        };
        context.Batch.Pieces.Add(piece);
        CheckDistances(row, At, piece.At, OffAxis, piece.OffAxis, piece.LengthUnit);
        if (!row.IsEmpty(Weight) && new Weight(piece.Weight, piece.WeightUnit).Grams is <= 0 or > 100)
            row.Refuse(Weight, "A piece weighs more than 0 and at most 100 g (3.5 oz).");
        if (piece.RemovedOn < piece.AddedOn)
            row.Refuse(RemovedOn, $"This is before the day it was put on, {Formats.Day(piece.AddedOn)}. Correct one of the two.");
    }

    internal static void CheckDistances(SheetRow row, Column<decimal?> atColumn, decimal at, Column<decimal?> offAxisColumn, decimal offAxis, LengthUnit unit)
    {
        if (new Distance(at, unit).Mm > 800)
            row.Refuse(atColumn, "A place lies between 0 and 80 cm (31.5 in) from the butt.");
        if (new Distance(offAxis, unit).Mm > 200)
            row.Refuse(offAxisColumn, "It lies between 0 and 20 cm (7.9 in) from the middle.");
    }
}
