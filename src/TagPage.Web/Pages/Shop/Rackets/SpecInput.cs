using System.ComponentModel.DataAnnotations;
using TagPage.Records.Specs;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>What the spec forms post: one measurement of a racket.</summary>
public sealed record SpecInput : IValidatableObject
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    public string? Confirmed { get; init; }

    [Required(ErrorMessage = "Enter the day it was measured.")]
    [Range(typeof(DateOnly), "1970-01-01", "2099-12-31", ParseLimitsInInvariantCulture = true, ConvertValueInInvariantCulture = true, ErrorMessage = "Check the year.")]
    public DateOnly? MeasuredOn { get; init; }

    [Range(50.0, 500.0, ErrorMessage = "A racket weighs between 50 and 500 g.")]
    public decimal? WeightG { get; init; }

    [Range(100.0, 500.0, ErrorMessage = "A balance point lies between 100 and 500 mm from the butt.")]
    public decimal? BalanceMm { get; init; }

    [Range(30.0, 500.0, ErrorMessage = "A swing weight lies between 30 and 500 kg·cm².")]
    public decimal? SwingWeight { get; init; }

    [Range(0.0, 200.0, ErrorMessage = "Enter a stiffness between 0 and 200.")]
    public decimal? Stiffness { get; init; }

    [StringLength(20, ErrorMessage = "Keep the scale within 20 characters.")]
    public string? StiffnessScale { get; init; }

    [Range(300.0, 800.0, ErrorMessage = "A racket is between 300 and 800 mm long.")]
    public decimal? LengthMm { get; init; }

    public bool Strung { get; init; }

    public bool GripOn { get; init; }

    public bool DampenerOn { get; init; }

    [StringLength(500, ErrorMessage = "Keep the note within 500 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if ((WeightG ?? BalanceMm ?? SwingWeight ?? Stiffness ?? LengthMm) is null)
            yield return new ValidationResult("Enter at least one measured number.", [nameof(WeightG)]);
        if (BalanceMm >= LengthMm)
            yield return new ValidationResult("The balance point lies beyond the tip. Measure both from the butt, in mm.", [nameof(BalanceMm)]);
        if (Stiffness is not null && StiffnessScale is null)
            yield return new ValidationResult("Enter which scale the stiffness is on: two scales cannot be compared.", [nameof(StiffnessScale)]);
    }

    public SpecEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        MeasuredOn = MeasuredOn!.Value,
        WeightG = WeightG,
        BalanceMm = BalanceMm,
        SwingWeight = SwingWeight,
        Stiffness = Stiffness,
        StiffnessScale = StiffnessScale,
        LengthMm = LengthMm,
        Strung = Strung,
        GripOn = GripOn,
        DampenerOn = DampenerOn,
        Note = Note,
    };
}
