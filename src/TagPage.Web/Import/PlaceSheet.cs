using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>places.csv</summary>
internal static class PlaceSheet
{
    public const string File = "places.csv";

    private static readonly Column<string> Racket = new("racket", CellKinds.Key, "The key of a racket.") { Needed = true };
    private static readonly Column<string> Name = new("name", Kinds.Line(40), "What you call the place.") { Needed = true };
    private static readonly Column<decimal?> At = new("at", Kinds.Number(0, 800, PieceSheet.Places), "Distance from the butt, in the unit beside it.") { Needed = true };
    private static readonly Column<decimal?> OffAxis = new("off_axis", Kinds.Number(0, 200, PieceSheet.Places), "Distance of each side from the middle. Empty means 0.");
    private static readonly Column<LengthUnit?> Unit = new("length_unit", Kinds.OneOf<LengthUnit>(), "Of both distances. Empty means cm.");
    private static readonly Column<bool?> Paired = new("paired", Kinds.YesNo, "Whether it is two sides that mirror each other. Empty means no.");
    private static readonly Column<decimal?> Most = new("most", Kinds.Number(0, 100, PieceSheet.Places), "What it carries at most, both sides together. Empty means 20 g.");
    private static readonly Column<WeightUnit?> WeightUnit = new("weight_unit", Kinds.OneOf<WeightUnit>(), "Of most. Empty means g.");
    private static readonly Column<bool?> OnStrings = new("on_strings", Kinds.YesNo, "Whether it is on the strings. Empty means no.");

    public static Sheet Sheet { get; } = new(File, "Where a frame can carry mass, if it has a list of its own; one that has stays as it is. You can leave this file out.",
        [Racket, Name, At, OffAxis, Unit, Paired, Most, WeightUnit, OnStrings]);

    public static void Read(SheetRow row, ImportContext context)
    {
        var unit = row.Get(WeightUnit) ?? default;
        var place = new PlaceRow
        {
            Line = row.Line,
            Racket = context.Batch.Rackets.Find(row, Racket, RacketSheet.File),
            Name = row.Get(Name) ?? "",
            At = row.Get(At) ?? 0,
            OffAxis = row.Get(OffAxis) ?? 0,
            LengthUnit = row.Get(Unit) ?? LengthUnit.Cm,
            Paired = row.Get(Paired) ?? false,
            Most = row.Get(Most) ?? new Weight((decimal)FramePlace.StartingMostG, Core.Units.WeightUnit.G).In(unit),
            WeightUnit = unit,
            OnStrings = row.Get(OnStrings) ?? false,
        };
        context.Batch.Places.Add(place);
        PieceSheet.CheckDistances(row, At, place.At, OffAxis, place.OffAxis, place.LengthUnit);
        if (new Weight(place.Most, unit).Grams > 100)
            row.Refuse(Most, "A place carries between 0 and 100 g.");
    }
}
