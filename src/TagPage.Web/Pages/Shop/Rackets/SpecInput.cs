using System.ComponentModel.DataAnnotations;
using TagPage.Core.Customising;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Specs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>What the spec forms post: one measurement of a racket.</summary>
public sealed record SpecInput : IValidatableObject
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    public string? Confirmed { get; init; }

    [Required(ErrorMessage = "Enter the day it was measured.")]
    [LikelyYear]
    public DateOnly? MeasuredOn { get; init; }

    public SpecKind Kind { get; init; }

    [Range(1.0, 500.0, ErrorMessage = SpecFaults.Weight)]
    public decimal? Weight { get; init; }

    public WeightUnit WeightUnit { get; init; }

    [Range(-60.0, 500.0, ErrorMessage = SpecFaults.Balance)]
    public decimal? Balance { get; init; }

    public BalanceUnit BalanceUnit { get; init; }

    [Range(0.1, 500.0, ErrorMessage = SpecFaults.TipWeight)]
    public decimal? TipWeight { get; init; }

    [Range(10.0, 800.0, ErrorMessage = SpecFaults.Length)]
    public decimal? Length { get; init; }

    public LengthUnit LengthUnit { get; init; }

    [Range(0.0, 10_000.0, ErrorMessage = SpecFaults.SwingWeight)]
    public decimal? SwingWeight { get; init; }

    /// <summary>In the length's unit.</summary>
    [Range(0.0, 800.0, ErrorMessage = SpecFaults.PendulumAxis)]
    public decimal? PendulumAxis { get; init; }

    [Range(0.3, 5.0, ErrorMessage = "One swing there and back takes between 0.3 and 5 s. Divide the time by the number of swings.")]
    public decimal? PendulumPeriodS { get; init; }

    [Range(0.0, 1.0, ErrorMessage = "Enter how far off the time may be, between 0 and 1 s.")]
    public decimal? PendulumOffS { get; init; }

    [Range(0.0, 200.0, ErrorMessage = "Enter a stiffness between 0 and 200.")]
    public decimal? Stiffness { get; init; }

    [StringLength(20, ErrorMessage = "Keep the scale within 20 characters.")]
    public string? StiffnessScale { get; init; }

    public bool Strung { get; init; }

    public bool GripOn { get; init; }

    public bool DampenerOn { get; init; }

    [StringLength(500, ErrorMessage = "Keep the note within 500 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }

    public decimal? WeightG => Read.WeightG;

    public decimal? LengthMm => Read.LengthMm;

    public decimal? PendulumAxisMm => PendulumAxis is { } axis ? new Distance(axis, LengthUnit).Mm : null;

    private bool HasPendulum => PendulumPeriodS is not null && SwingWeight is null;

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if ((Weight ?? Balance ?? SwingWeight ?? Stiffness ?? Length) is null)
            yield return new ValidationResult("Enter at least one measured number.", [nameof(Weight)]);
        if (TipWeight is not null && Balance is not null)
            yield return new ValidationResult("Clear this or the balance point: only one of them can count.", [nameof(TipWeight)]);
        if (SwingWeight is not null && (PendulumPeriodS ?? PendulumAxis) is not null)
            yield return new ValidationResult("Clear the swing weight or what the pendulum showed: only one of them can count.", [nameof(SwingWeight)]);
        foreach (var (field, says) in SpecFaults.Of(Read))
            yield return new ValidationResult(says, [field]);
        if (Stiffness is not null && StiffnessScale is null)
            yield return new ValidationResult("Enter which scale the stiffness is on: two scales cannot be compared.", [nameof(StiffnessScale)]);
    }

    public decimal? BalanceMm => SpecWorkings.Balanced(Read).BalanceMm;

    /// <summary>As typed; only what follows from other figures is worked out.</summary>
    public SpecEntry ToEntry(CustomisingValues values) => SpecWorkings.Complete(Read, values.Gravity);

    // A balance and a swing weight that were typed count alone.
    private SpecEntry Read => new()
    {
        FormKey = FormKey,
        Version = Version,
        MeasuredOn = MeasuredOn ?? default,
        Kind = Kind,
        Weight = Weight,
        WeightUnit = WeightUnit,
        Length = Length,
        LengthUnit = LengthUnit,
        Balance = Balance,
        BalanceUnit = BalanceUnit,
        TipWeight = Balance is null ? TipWeight : null,
        SwingWeight = SwingWeight,
        PendulumAxis = HasPendulum ? PendulumAxis : null,
        PendulumPeriodS = HasPendulum ? PendulumPeriodS : null,
        PendulumOffS = HasPendulum ? PendulumOffS : null,
        Stiffness = Stiffness,
        StiffnessScale = StiffnessScale,
        Strung = Strung,
        GripOn = GripOn,
        DampenerOn = DampenerOn,
        Note = Note,
    };

    /// <summary>What a new spec starts from: how the racket was last, in the shop's units.</summary>
    public static SpecInput Start(SpecStore.Row? last, Sport sport, CustomisingValues values, DateOnly today, string? scale) => new()
    {
        FormKey = Records.Storage.FormKey.New(),
        MeasuredOn = today,
        Kind = last is null ? SpecKind.Received : SpecKind.Remeasured,
        WeightUnit = values.WeightUnit,
        Length = last?.Length,
        LengthUnit = last is { Length: not null } ? last.LengthUnit : values.LengthUnit,
        BalanceUnit = new SpecWords(values, sport).BalanceUnit,
        StiffnessScale = scale,
        Strung = last?.Strung ?? true,
        GripOn = last?.GripOn ?? true,
        DampenerOn = last?.DampenerOn ?? false,
    };

    /// <summary>As it was entered: what was worked out is left empty, so that it follows from what is changed.</summary>
    public static SpecInput Of(SpecStore.Row spec) => new()
    {
        Version = spec.Version,
        MeasuredOn = spec.MeasuredOn,
        Kind = spec.Kind,
        Weight = spec.Weight,
        WeightUnit = spec.WeightUnit,
        Length = spec.Length,
        LengthUnit = spec.LengthUnit,
        Balance = spec.TipWeight is null ? spec.Balance : null,
        BalanceUnit = spec.BalanceUnit,
        TipWeight = spec.TipWeight,
        SwingWeight = spec.SwingSource == SwingSource.Pendulum ? null : spec.SwingWeight,
        PendulumAxis = spec.PendulumAxis,
        PendulumPeriodS = spec.PendulumPeriodS,
        PendulumOffS = spec.PendulumOffS,
        Stiffness = spec.Stiffness,
        StiffnessScale = spec.StiffnessScale,
        Strung = spec.Strung,
        GripOn = spec.GripOn,
        DampenerOn = spec.DampenerOn,
        Note = spec.Note,
    };
}
