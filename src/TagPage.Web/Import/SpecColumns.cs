using TagPage.Core.Customising;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>The columns of specs.csv.</summary>
internal static class SpecColumns
{
    public static readonly Column<string> Racket = new("racket", CellKinds.Key, "The key of a racket.") { Needed = true, GivenAs = "racket_id" };
    public static readonly Column<DateOnly?> MeasuredOn = new("measured_on", Kinds.Day, "The day it was measured.") { Needed = true };
    public static readonly Column<SpecKind?> Kind = new("kind", Kinds.OneOf<SpecKind>(), "How the racket was. Empty means received.");
    public static readonly Column<decimal?> WeightG = new("weight_g", Kinds.Number(50, 500, 2), "Weight in g.");
    public static readonly Column<decimal?> Weight = new("weight", Kinds.Number(1, 500, ImportLimits.Decimals), "Weight in the unit beside it, instead of weight_g.");
    public static readonly Column<WeightUnit?> WeightUnit = new("weight_unit", Kinds.OneOf<WeightUnit>(), "Of weight and tip_weight. Empty means g.");
    public static readonly Column<decimal?> BalanceMm = new("balance_mm", Kinds.Number(100, 500, 2), "Balance point in mm from the butt.");
    public static readonly Column<decimal?> Balance = new("balance", Kinds.Number(-60, 500, ImportLimits.Decimals), "Balance in the unit beside it, instead of balance_mm.");
    public static readonly Column<BalanceUnit?> BalanceUnit = new("balance_unit", Kinds.OneOf<BalanceUnit>(), "Points are head light above zero. Empty means mm.");
    public static readonly Column<decimal?> TipWeight = new("tip_weight", Kinds.Number(0.1m, 500, ImportLimits.Decimals), "What the scale under the tip showed.");
    public static readonly Column<decimal?> SwingWeight = new("swing_weight", Kinds.Number(0, 10_000, ImportLimits.Decimals), "In kg·cm².");
    public static readonly Column<SwingSource?> SwingSource = new("swing_source", Kinds.OneOf<SwingSource>(), "Where it comes from. Empty means machine.");
    public static readonly Column<decimal?> PendulumAxis = new("pendulum_axis", Kinds.Number(0, 800, ImportLimits.Decimals), "Where it hung, from the butt, in the unit of the length.");
    public static readonly Column<decimal?> PendulumPeriod = new("pendulum_period_s", Kinds.Number(0.3m, 5, ImportLimits.Decimals), "Seconds for one swing there and back.");
    public static readonly Column<decimal?> PendulumOff = new("pendulum_off_s", Kinds.Number(0, 1, ImportLimits.Decimals), "How far off that may be.");
    public static readonly Column<decimal?> WeightOff = new("weight_off_g", Kinds.Number(0, 100, ImportLimits.Decimals), "How far off a weight that was worked out may be, in g.");
    public static readonly Column<decimal?> BalanceOff = new("balance_off_mm", Kinds.Number(0, 100, ImportLimits.Decimals), "The same for the balance, in mm.");
    public static readonly Column<decimal?> SwingWeightOff = new("swing_weight_off", Kinds.Number(0, 100, ImportLimits.Decimals), "The same for the swing weight, in kg·cm².");
    public static readonly Column<decimal?> WeightBalanceR = new("weight_balance_r", Kinds.Number(-1, 1, ImportLimits.Decimals), "How the errors of a weight and a balance that were worked out go together.");
    public static readonly Column<decimal?> WeightSwingR = new("weight_swing_r", Kinds.Number(-1, 1, ImportLimits.Decimals), "The same for weight and swing weight.");
    public static readonly Column<decimal?> BalanceSwingR = new("balance_swing_r", Kinds.Number(-1, 1, ImportLimits.Decimals), "The same for balance and swing weight.");
    public static readonly Column<decimal?> Stiffness = new("stiffness", Kinds.Number(0, 200, ImportLimits.Decimals), "On the scale named beside it.");
    public static readonly Column<string> StiffnessScale = new("stiffness_scale", Kinds.Line(20), "Which scale that is.");
    public static readonly Column<decimal?> LengthMm = new("length_mm", Kinds.Number(SportFacts.MinLengthMm, SportFacts.MaxLengthMm, 1), "Overall length in mm.");
    public static readonly Column<decimal?> Length = new("length", Kinds.Number(10, SportFacts.MaxLengthMm, ImportLimits.Decimals), "Overall length in the unit beside it, instead of length_mm.");
    public static readonly Column<LengthUnit?> LengthUnit = new("length_unit", Kinds.OneOf<LengthUnit>(), "Of length and pendulum_axis. Empty means mm.");
    public static readonly Column<bool?> Strung = new("strung", Kinds.YesNo, "Whether it was strung when measured. Empty means yes.");
    public static readonly Column<bool?> GripOn = new("grip_on", Kinds.YesNo, "Whether the grip was on. Empty means yes.");
    public static readonly Column<bool?> DampenerOn = new("dampener_on", Kinds.YesNo, "Whether a dampener was on. Empty means no.");
    public static readonly Column<string> Note = new("note", Kinds.Note(ImportLimits.Note), "Only the shop sees it.");

    public static readonly Column[] Measured = [WeightG, Weight, BalanceMm, Balance, SwingWeight, Stiffness, LengthMm, Length];

    /// <summary>What other figures may follow from.</summary>
    public static readonly Column[] Figures = [WeightG, Weight, BalanceMm, Balance, TipWeight, PendulumAxis, PendulumPeriod, LengthMm, Length, LengthUnit, WeightUnit, BalanceUnit];

    public static readonly Column[] All =
    [
        Racket, MeasuredOn, Kind, WeightG, Weight, WeightUnit, BalanceMm, Balance, BalanceUnit, TipWeight, SwingWeight, SwingSource, PendulumAxis, PendulumPeriod,
        PendulumOff, WeightOff, BalanceOff, SwingWeightOff, WeightBalanceR, WeightSwingR, BalanceSwingR, Stiffness, StiffnessScale, LengthMm, Length, LengthUnit, Strung, GripOn, DampenerOn, Note,
    ];
}
