using System.ComponentModel.DataAnnotations;
using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Customising;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>One line of a frame's list of places, in the shop's units. A line without a name is left out.</summary>
public sealed record PlaceInput : IValidatableObject
{
    [StringLength(40, ErrorMessage = "Keep the name within 40 characters.")]
    public string? Name { get; init; }

    public decimal? At { get; init; }

    public decimal? OffAxis { get; init; }

    /// <summary>The unit that both distances were shown in.</summary>
    public LengthUnit LengthUnit { get; init; } = LengthUnit.Cm;

    public bool Paired { get; init; }

    public decimal? Most { get; init; }

    public WeightUnit WeightUnit { get; init; }

    public bool OnStrings { get; init; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (Name is not null && At is null)
            yield return new ValidationResult("Enter how far it is from the butt.", [nameof(At)]);
        if (Name is null && At is not null)
            yield return new ValidationResult("Name the place, or clear the whole line.", [nameof(Name)]);
        if (Cm(At) is < 0 or > FramePlace.FarthestCm)
            yield return new ValidationResult($"A place is between 0 and {Limit(FramePlace.FarthestCm)} from the butt.", [nameof(At)]);
        if (Cm(OffAxis) is < 0 or > FramePlace.FarthestOffAxisCm)
            yield return new ValidationResult($"It is between 0 and {Limit(FramePlace.FarthestOffAxisCm)} from the middle.", [nameof(OffAxis)]);
        if (Most is { } most && new Weight(most, WeightUnit).Grams is < 0 or > FramePlace.HeaviestG)
            yield return new ValidationResult("Enter between 0 and 100 g.", [nameof(Most)]);
    }

    private decimal? Cm(decimal? distance) => distance is { } known ? new Distance(known, LengthUnit).Mm / 10 : null;

    private string Limit(int cm) => LengthUnit == LengthUnit.In ? $"{Formats.Number(cm / 2.54m, 1)} in" : $"{cm} cm";

    public static PlaceInput Empty(SpecWords words) => new() { LengthUnit = words.PlaceLengthUnit, WeightUnit = words.Values.WeightUnit };

    public static PlaceInput Of(FramePlace place, SpecWords words) => Empty(words) with
    {
        Name = place.Name,
        At = Round(place.AtCm * words.PlaceUnit.PerCm),
        OffAxis = Round(place.OffAxisCm * words.PlaceUnit.PerCm),
        Paired = place.Paired,
        Most = Round(place.MostG * words.MassUnit.PerG),
        OnStrings = place.OnStrings,
    };

    private static decimal Round(double value) => Math.Round((decimal)value, 3);

    public FramePlaceEntry ToEntry() => new()
    {
        Name = Name!,
        At = At!.Value,
        OffAxis = OffAxis ?? 0,
        LengthUnit = LengthUnit,
        Paired = Paired,
        Most = Most ?? new Weight((decimal)FramePlace.StartingMostG, WeightUnit.G).In(WeightUnit),
        WeightUnit = WeightUnit,
        OnStrings = OnStrings,
    };
}
