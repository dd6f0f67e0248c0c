using System.ComponentModel.DataAnnotations;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Frames;

namespace TagPage.Web.Pages.Shop.Frames;

/// <summary>What the forms about frames post.</summary>
public sealed record FrameInput : IValidatableObject
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Choose the sport.")]
    public Sport? Sport { get; init; }

    [Required(ErrorMessage = "Enter the maker and model, as you write it on rackets.")]
    [StringLength(80, ErrorMessage = "Keep the name within 80 characters.")]
    public string? Name { get; init; }

    [Range(8, 40, ErrorMessage = "A frame has between 8 and 40 mains.")]
    public int? PatternMains { get; init; }

    [Range(8, 40, ErrorMessage = "A frame has between 8 and 40 crosses.")]
    public int? PatternCrosses { get; init; }

    [StringLength(120, ErrorMessage = "Keep this within 120 characters.")]
    public string? SkippedHoles { get; init; }

    [StringLength(120, ErrorMessage = "Keep this within 120 characters.")]
    public string? TieOffs { get; init; }

    [Range(1.0, 100.0, ErrorMessage = "Enter a tension between 1 and 100.")]
    public decimal? LeastTension { get; init; }

    [Range(1.0, 100.0, ErrorMessage = "Enter a tension between 1 and 100.")]
    public decimal? MostTension { get; init; }

    public TensionUnit TensionUnit { get; init; }

    [StringLength(500, ErrorMessage = "Keep the note within 500 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (LeastTension > MostTension)
            yield return new ValidationResult("The highest tension is below the lowest. Correct one of them.", [nameof(MostTension)]);
    }

    public FrameEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        Sport = Sport!.Value,
        Name = Name!,
        PatternMains = PatternMains,
        PatternCrosses = PatternCrosses,
        SkippedHoles = SkippedHoles,
        TieOffs = TieOffs,
        LeastTension = LeastTension,
        MostTension = MostTension,
        TensionUnit = TensionUnit,
        Note = Note,
    };
}
