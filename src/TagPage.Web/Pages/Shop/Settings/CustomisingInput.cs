using System.ComponentModel.DataAnnotations;
using TagPage.Core.Customising;
using TagPage.Core.Units;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>What the form about measuring and customising posts.</summary>
public sealed record CustomisingInput
{
    public int Version { get; init; }

    public WeightUnit WeightUnit { get; init; }

    public BalanceUnit BalanceUnit { get; init; }

    public LengthUnit LengthUnit { get; init; }

    [Required(ErrorMessage = "Enter how far off the scale may be.")]
    [Range(0.001, 5.0, ErrorMessage = "Enter between 0.001 and 5 g.")]
    public decimal? ToleranceG { get; init; }

    [Required(ErrorMessage = "Enter how far off a length may be.")]
    [Range(0.05, 20.0, ErrorMessage = "Enter between 0.05 and 20 mm.")]
    public decimal? ToleranceMm { get; init; }

    [Required(ErrorMessage = "Enter how far off a swing weight may be.")]
    [Range(0.05, 20.0, ErrorMessage = "Enter between 0.05 and 20 kg·cm².")]
    public decimal? ToleranceSwing { get; init; }

    [Required(ErrorMessage = "Enter how far off one swing from a stop-watch may be.")]
    [Range(0.0001, 1.0, ErrorMessage = "Enter between 0.0001 and 1 s.")]
    public decimal? TolerancePeriodS { get; init; }

    [Required(ErrorMessage = "Enter what 1 cm of lead tape weighs.")]
    [Range(0.01, 5.0, ErrorMessage = "Enter between 0.01 and 5 g.")]
    public decimal? LeadGramsPerCm { get; init; }

    [Required(ErrorMessage = "Enter what 1 cm of tungsten tape weighs.")]
    [Range(0.01, 5.0, ErrorMessage = "Enter between 0.01 and 5 g.")]
    public decimal? TungstenGramsPerCm { get; init; }

    [Required(ErrorMessage = "Enter what to round to.")]
    [Range(0.05, 5.0, ErrorMessage = "Enter between 0.05 and 5 g.")]
    public decimal? StepG { get; init; }

    [Required(ErrorMessage = "Enter the gravity of your town, or 9.80665.")]
    [Range(9.7, 9.9, ErrorMessage = "On Earth it is between 9.7 and 9.9 m/s².")]
    public decimal? Gravity { get; init; }

    public static CustomisingInput Of(CustomisingValues values, int version) => new()
    {
        Version = version,
        WeightUnit = values.WeightUnit,
        BalanceUnit = values.BalanceUnit,
        LengthUnit = values.LengthUnit,
        ToleranceG = (decimal)values.Tolerances.MassG,
        ToleranceMm = (decimal)values.Tolerances.LengthMm,
        ToleranceSwing = (decimal)values.Tolerances.SwingWeight,
        TolerancePeriodS = (decimal)values.Tolerances.PeriodS,
        LeadGramsPerCm = (decimal)values.Tape.LeadGramsPerCm,
        TungstenGramsPerCm = (decimal)values.Tape.TungstenGramsPerCm,
        StepG = (decimal)values.StepG,
        Gravity = (decimal)values.Gravity,
    };

    public CustomisingValues ToValues() => new()
    {
        WeightUnit = WeightUnit,
        BalanceUnit = BalanceUnit,
        LengthUnit = LengthUnit,
        Tolerances = new() { MassG = (double)ToleranceG!, LengthMm = (double)ToleranceMm!, SwingWeight = (double)ToleranceSwing!, PeriodS = (double)TolerancePeriodS! },
        Tape = new() { LeadGramsPerCm = (double)LeadGramsPerCm!, TungstenGramsPerCm = (double)TungstenGramsPerCm! },
        StepG = (double)StepG!,
        Gravity = (double)Gravity!,
    };
}
