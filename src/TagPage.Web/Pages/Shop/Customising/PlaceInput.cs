using System.ComponentModel.DataAnnotations;
using TagPage.Core.Customising;

namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>One line of a frame's list of places. A line without a name is left out.</summary>
public sealed record PlaceInput : IValidatableObject
{
    [StringLength(40, ErrorMessage = "Keep the name within 40 characters.")]
    public string? Name { get; init; }

    [Range(0.0, 80.0, ErrorMessage = "A place lies between 0 and 80 cm from the butt.")]
    public decimal? AtCm { get; init; }

    [Range(0.0, 20.0, ErrorMessage = "It lies between 0 and 20 cm from the middle.")]
    public decimal? OffAxisCm { get; init; }

    public bool Paired { get; init; }

    [Range(0.0, 100.0, ErrorMessage = "Enter between 0 and 100 g.")]
    public decimal? MostG { get; init; }

    public bool OnStrings { get; init; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (Name is not null && AtCm is null)
            yield return new ValidationResult("Enter how far it is from the butt.", [nameof(AtCm)]);
        if (Name is null && AtCm is not null)
            yield return new ValidationResult("Name the place, or empty the whole line.", [nameof(Name)]);
    }

    public static PlaceInput Of(FramePlace place) => new()
    {
        Name = place.Name,
        AtCm = (decimal)place.AtCm,
        OffAxisCm = (decimal)place.OffAxisCm,
        Paired = place.Paired,
        MostG = (decimal)place.MostG,
        OnStrings = place.OnStrings,
    };

    public FramePlace ToPlace() => new(Name!, (double)AtCm!)
    {
        OffAxisCm = (double)(OffAxisCm ?? 0),
        Paired = Paired,
        MostG = (double)(MostG ?? (decimal)FramePlace.StartingMostG),
        OnStrings = OnStrings,
    };
}
