using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Customising;
using TagPage.Records.Import;
using TagPage.Web.Csv;
using TagPage.Web.Words;
using static TagPage.Web.Import.FrameColumns;

namespace TagPage.Web.Import;

/// <summary>pieces.csv</summary>
internal static class PieceSheet
{
    public const string File = "pieces.csv";

    private const int MostSpecs = 100_000;

    private static readonly Column<string> Place = new("place", Kinds.Line(40), "Where it is, in words.") { Needed = true };
    private static readonly Column<decimal?> Weight = new("weight", Kinds.Number(0, FramePlace.HeaviestG, ImportLimits.Decimals), "What it weighs, both sides together.") { Needed = true };
    private static readonly Column<WeightUnit?> WeightUnit = new("weight_unit", Kinds.OneOf<WeightUnit>(), "Of the weight. Empty means g.");
    private static readonly Column<AddedMaterial?> Material = new("material", Kinds.OneOf<AddedMaterial>(), "What it is made of.") { Needed = true };
    private static readonly Column<DateOnly?> AddedOn = new("added_on", Kinds.Day, "The day it was put on, or seen.") { Needed = true };
    private static readonly Column<DateOnly?> RemovedOn = new("removed_on", Kinds.Day, "The day it came off. Empty means it is still on.");
    private static readonly Column<bool?> ByPlan = new("by_plan", Kinds.YesNo, "Whether a plan put it on, whose spec counts it. Empty means no.");
    private static readonly Column<int?> NotedAfter = new("noted_after", Kinds.Whole(0, MostSpecs), "How many specs the racket had when it was noted. Empty means 0.");
    private static readonly Column<bool?> OffByPlan = new("off_by_plan", Kinds.YesNo, "Whether a plan took it off. Empty means no.");
    private static readonly Column<int?> OffNotedAfter = new("off_noted_after", Kinds.Whole(0, MostSpecs), "How many specs the racket had then. Empty means 0.");

    public static Sheet Sheet { get; } = new(File, "What is or was added to a frame. You can leave this file out.",
        [Racket, Place, At, OffAxis, Unit, OnStrings, Weight, WeightUnit, Material, AddedOn, RemovedOn, ByPlan, NotedAfter, OffByPlan, OffNotedAfter])
    { GivenAs = "added_mass.csv" };

    public static void Read(SheetRow row, ImportContext context)
    {
        var racket = context.Batch.Rackets.Find(row, Racket, RacketSheet.File);
        var (at, offAxis, unit) = Distances(row);
        var piece = new PieceEntry
        {
            Place = row.Get(Place) ?? "",
            At = at,
            OffAxis = offAxis,
            LengthUnit = unit,
            OnStrings = row.Get(OnStrings) ?? false,
            Weight = row.Get(Weight) ?? 0,
            WeightUnit = row.Get(WeightUnit) ?? default,
            Material = row.Get(Material) ?? default,
            AddedOn = context.Past(row, AddedOn) ?? default,
        };
        var removed = context.Past(row, RemovedOn);
        context.Batch.Pieces.Add(new PieceRow
        {
            Line = row.Line,
            Racket = racket,
            Piece = piece,
            RemovedOn = removed,
            ByPlan = row.Get(ByPlan) ?? false,
            NotedAfter = row.Get(NotedAfter) ?? 0,
            OffByPlan = row.Get(OffByPlan) ?? false,
            OffNotedAfter = row.Get(OffNotedAfter) ?? 0,
        });
        if (!row.IsEmpty(Weight) && new Weight(piece.Weight, piece.WeightUnit).Grams is <= 0 or > FramePlace.HeaviestG)
            row.Refuse(Weight, "A piece weighs more than 0 and at most 100 g (3.5 oz).");
        if (removed < piece.AddedOn)
            row.Refuse(RemovedOn, $"This is before the day it was put on, {Formats.Day(piece.AddedOn)}. Correct one of the two.");
    }
}
