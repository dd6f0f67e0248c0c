using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Customising;
using TagPage.Records.Import;
using TagPage.Web.Csv;
using static TagPage.Web.Import.FrameColumns;

namespace TagPage.Web.Import;

/// <summary>places.csv</summary>
internal static class PlaceSheet
{
    public const string File = "places.csv";

    private static readonly Column<string> Name = new("name", Kinds.Line(40), "What you call the place.") { Needed = true };
    private static readonly Column<bool?> Paired = new("paired", Kinds.YesNo, "Whether it is two sides that mirror each other. Empty means no.");
    private static readonly Column<decimal?> Most = new("most", Kinds.Number(0, FramePlace.HeaviestG, ImportLimits.Decimals), "What it carries at most, both sides together. Empty means 20 g.");
    private static readonly Column<WeightUnit?> WeightUnit = new("weight_unit", Kinds.OneOf<WeightUnit>(), "Of most. Empty means g.");

    public static Sheet Sheet { get; } = new(File, "Where a frame can carry mass, if it has a list of its own; a frame that already has one here keeps it. You can leave this file out.",
        [Racket, Name, At, OffAxis, Unit, Paired, Most, WeightUnit, OnStrings])
    { GivenAs = "frame_place.csv" };

    public static void Read(SheetRow row, ImportContext context)
    {
        var racket = context.Batch.Rackets.Find(row, Racket, RacketSheet.File);
        var (at, offAxis, unit) = Distances(row);
        var weightUnit = row.Get(WeightUnit) ?? default;
        var place = new FramePlaceEntry
        {
            Name = row.Get(Name) ?? "",
            At = at,
            OffAxis = offAxis,
            LengthUnit = unit,
            Paired = row.Get(Paired) ?? false,
            Most = row.Get(Most) ?? new Weight((decimal)FramePlace.StartingMostG, Core.Units.WeightUnit.G).In(weightUnit),
            WeightUnit = weightUnit,
            OnStrings = row.Get(OnStrings) ?? false,
        };
        context.Batch.Places.Add(new PlaceRow { Line = row.Line, Racket = racket, Place = place });
        if (new Weight(place.Most, weightUnit).Grams > FramePlace.HeaviestG)
            row.Refuse(Most, "A place carries between 0 and 100 g.");
    }
}
