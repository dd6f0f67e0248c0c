using System.ComponentModel.DataAnnotations;
using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Customising;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>What the form about a piece posts, in the shop's units. Where it names a place of the frame, that tells the distances.</summary>
public sealed record PieceInput : IValidatableObject
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter where it is.")]
    [StringLength(40, ErrorMessage = "Keep the place within 40 characters.")]
    public string? Place { get; init; }

    public decimal? At { get; init; }

    public decimal? OffAxis { get; init; }

    public LengthUnit LengthUnit { get; init; } = LengthUnit.Cm;

    public bool OnStrings { get; init; }

    [Required(ErrorMessage = "Enter how much it weighs.")]
    public decimal? Weight { get; init; }

    public WeightUnit WeightUnit { get; init; }

    public AddedMaterial Material { get; init; }

    [Required(ErrorMessage = "Enter the day it was put on, or today if nobody knows.")]
    [LikelyYear]
    public DateOnly? AddedOn { get; init; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (Cm(At) is < 0 or > FramePlace.FarthestCm)
            yield return new ValidationResult(PlaceWords.FromButt, [nameof(At)]);
        if (Cm(OffAxis) is < 0 or > FramePlace.FarthestOffAxisCm)
            yield return new ValidationResult(PlaceWords.FromMiddle, [nameof(OffAxis)]);
        if (Weight is { } weight && new Weight(weight, WeightUnit).Grams is <= 0 or > FramePlace.HeaviestG)
            yield return new ValidationResult("Enter more than 0 and at most 100 g (3.5 oz).", [nameof(Weight)]);
    }

    private decimal? Cm(decimal? distance) => distance is { } known ? new Distance(known, LengthUnit).Mm / 10 : null;

    /// <param name="place">The frame's place of that name; null where the distance was typed.</param>
    public PieceEntry ToEntry(FramePlace? place) => new()
    {
        FormKey = FormKey,
        Place = Place!,
        At = At ?? (decimal)place!.AtCm,
        OffAxis = At is null ? (decimal)place!.OffAxisCm : OffAxis ?? 0,
        LengthUnit = At is null ? LengthUnit.Cm : LengthUnit,
        OnStrings = OnStrings || (At is null && place!.OnStrings),
        Weight = Weight!.Value,
        WeightUnit = WeightUnit,
        Material = Material,
        AddedOn = AddedOn!.Value,
    };
}
