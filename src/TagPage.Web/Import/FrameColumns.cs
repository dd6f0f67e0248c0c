using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Web.Csv;
using TagPage.Web.Words;

namespace TagPage.Web.Import;

/// <summary>What places.csv and pieces.csv have in common: where on a frame something is.</summary>
internal static class FrameColumns
{
    public static readonly Column<string> Racket = new("racket", CellKinds.Key, "The key of a racket.") { Needed = true, GivenAs = "racket_id" };
    public static readonly Column<decimal?> At = new("at", Kinds.Number(0, FramePlace.FarthestCm * 10, ImportLimits.Decimals), "Distance from the butt, in the unit beside it.") { Needed = true };
    public static readonly Column<decimal?> OffAxis = new("off_axis", Kinds.Number(0, FramePlace.FarthestOffAxisCm * 10, ImportLimits.Decimals), "Distance of each side from the middle. Empty means 0.");
    public static readonly Column<LengthUnit?> Unit = new("length_unit", Kinds.OneOf<LengthUnit>(), "Of both distances. Empty means cm.");
    public static readonly Column<bool?> OnStrings = new("on_strings", Kinds.YesNo, "Whether it is on the strings. Empty means no.");

    public static (decimal At, decimal OffAxis, LengthUnit Unit) Distances(SheetRow row)
    {
        var (at, offAxis, unit) = (row.Get(At) ?? 0, row.Get(OffAxis) ?? 0, row.Get(Unit) ?? LengthUnit.Cm);
        if (new Distance(at, unit).Mm > FramePlace.FarthestCm * 10)
            row.Refuse(At, PlaceWords.FromButt);
        if (new Distance(offAxis, unit).Mm > FramePlace.FarthestOffAxisCm * 10)
            row.Refuse(OffAxis, PlaceWords.FromMiddle);
        return (at, offAxis, unit);
    }
}
