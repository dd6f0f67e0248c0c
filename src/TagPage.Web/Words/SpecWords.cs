using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Specs;

namespace TagPage.Web.Words;

/// <summary>What a racket measures, on the shop's pages: in the shop's units, with what the instruments leave open.</summary>
/// <param name="Values">The shop's.</param>
/// <param name="Sport">Points are for tennis.</param>
public sealed record SpecWords(CustomisingValues Values, Sport Sport)
{
    public BalanceUnit BalanceUnit => Values.BalanceUnit == BalanceUnit.Points && Sport != Sport.Tennis ? BalanceUnit.Mm : Values.BalanceUnit;

    /// <summary>Points depend on each frame's length, so a set is asked about in the unit that it is shown in.</summary>
    public BalanceUnit SetBalanceUnit => (BalanceUnit, Values.LengthUnit) switch
    {
        (BalanceUnit.Points, LengthUnit.Cm) => BalanceUnit.Cm,
        (BalanceUnit.Points, LengthUnit.In) => BalanceUnit.In,
        (BalanceUnit.Points, _) => BalanceUnit.Mm,
        _ => BalanceUnit,
    };

    public string Mass(Uncertain? grams) => grams is { } g ? With(Times(g, MassUnit.PerG), MassUnit.Decimals, MassUnit.Name) : "";

    /// <summary>In points only where the length is known.</summary>
    public string Balance(SpecFigures figures) => figures.BalanceCm is not { } balance ? ""
        : figures.Points is { } points ? Balance(balance, points) : Balance(balance);

    /// <summary>The same where the points are known.</summary>
    public string Balance(Uncertain cm, Uncertain points) =>
        BalanceUnit == BalanceUnit.Points ? Head(points.Value, $"{Number(Math.Abs(points.Value), 1)} ± {Number(points.Off, 1)}") : Balance(cm);

    /// <summary>A balance alone, of a frame of that length.</summary>
    public string Balance(double cm, double lengthCm) => BalanceUnit != BalanceUnit.Points ? FromButt(cm)
        : Head(BalancePoint.Points(cm, lengthCm), Number(Math.Abs(BalancePoint.Points(cm, lengthCm)), 1));

    public string Balance(Uncertain cm) => With(Times(cm, FromButtUnit.PerCm), FromButtUnit.Decimals, FromButtUnit.Name);

    /// <summary>A weight alone.</summary>
    public string Mass(double grams) => $"{Number(grams * MassUnit.PerG, MassUnit.Decimals)} {MassUnit.Name}";

    /// <summary>A distance from the butt, or between two.</summary>
    public string FromButt(double cm) => $"{Number(cm * FromButtUnit.PerCm, FromButtUnit.Decimals)} {FromButtUnit.Name}";

    /// <summary>A place along a frame.</summary>
    public string At(double cm) => $"{Number(cm * PlaceUnit.PerCm, PlaceUnit.Decimals)} {PlaceUnit.Name}";

    /// <summary>A piece, which is lighter than what a scale for rackets shows.</summary>
    public string Piece(double grams) => $"{Number(grams * MassUnit.PerG, PieceDecimals)} {MassUnit.Name}";

    public int PieceDecimals => Values.WeightUnit == WeightUnit.Oz ? 3 : 2;

    /// <summary>Of places and tape: who thinks in millimetres reads centimetres.</summary>
    public (string Name, double PerCm, int Decimals) PlaceUnit => Values.LengthUnit == LengthUnit.In ? ("in", 1 / 2.54, 2) : ("cm", 1, 1);

    /// <summary>What forms about places call it.</summary>
    public LengthUnit PlaceLengthUnit => Values.LengthUnit == LengthUnit.In ? LengthUnit.In : LengthUnit.Cm;

    /// <summary>How long a tape that weighs so much is, after a comma; nothing where the material is no tape.</summary>
    public string TapeOf(double grams, AddedMaterial material) => Values.Tape.LengthCm(grams, material) is { } cm ? $", {At(cm)} of tape" : "";

    /// <summary>The balance on a label: points say on which side in two letters.</summary>
    public string LabelBalance(SpecFigures figures) => figures.BalanceCm is not { } balance ? ""
        : BalanceUnit == BalanceUnit.Points && figures.Points is { } points
            ? $"{Number(Math.Abs(points.Value), 1)} ± {Number(points.Off, 1)} pt {(points.Value < 0 ? "HH" : "HL")}"
        : FromButt(balance.Value);

    public static string Swing(double swing) => $"{Number(swing, 1)} kg·cm²";

    /// <summary>All three, with commas between them.</summary>
    public string Figures(Body body) => $"{Mass(body.MassG)}, {FromButt(body.BalanceCm)}, {Swing(body.SwingWeight)}";

    public (string Name, double PerG, int Decimals) MassUnit => Values.WeightUnit == WeightUnit.Oz ? ("oz", 1 / (double)Factors.GramsPerOunce, 3) : ("g", 1, 1);

    /// <summary>Where points were chosen and do not serve, the unit of lengths.</summary>
    public (string Name, double PerCm, int Decimals) FromButtUnit => (BalanceUnit, Values.LengthUnit) switch
    {
        (BalanceUnit.Cm, _) or (BalanceUnit.Points, LengthUnit.Cm) => ("cm", 1, 2),
        (BalanceUnit.In, _) or (BalanceUnit.Points, LengthUnit.In) => ("in", 1 / 2.54, 2),
        _ => ("mm", 10, 1),
    };

    private static string Head(double points, string says) => $"{says} points head {(points < 0 ? "heavy" : "light")}";

    public static string Swing(Uncertain? swing) => swing is { } s ? With(s, 1, "kg·cm²") : "";

    public string Length(decimal? mm) => mm is not { } length ? "" : Values.LengthUnit switch
    {
        LengthUnit.Cm => $"{Formats.Number(length / 10)} cm",
        LengthUnit.In => $"{Formats.Number(length / 25.4m)} in",
        _ => $"{Formats.Number(length)} mm",
    };

    /// <summary>What was typed, where it was typed in another unit than the shop's.</summary>
    public static string AsEntered(SpecEntry spec) => string.Join(", ", new[]
    {
        spec is { Weight: { } weight, WeightUnit: WeightUnit.Oz } ? $"{Formats.Number(weight, 4)} oz" : "",
        spec is { Balance: { } balance, BalanceUnit: not BalanceUnit.Mm } ? $"balance {Formats.Number(balance, 4)} {Of(spec.BalanceUnit)}" : "",
        spec is { Length: { } length, LengthUnit: not LengthUnit.Mm } ? $"length {Formats.Number(length, 4)} {Of(spec.LengthUnit)}" : "",
        spec.TipWeight is { } tip ? $"{Formats.Number(tip, 4)} {Of(spec.WeightUnit)} under the tip" : "",
        spec.PendulumPeriodS is { } period ? $"swings in {Formats.Number(period, 4)} s, hung at {Formats.Number(spec.PendulumAxis ?? 0, 4)} {Of(spec.LengthUnit)}" : "",
    }.Where(w => w.Length > 0));

    public static string State(SpecEntry spec) =>
        $"{(spec.Strung ? "strung" : "unstrung")}, {(spec.GripOn ? "grip on" : "no grip")}{(spec.DampenerOn ? ", dampener" : "")}";

    public static string Of(SpecKind kind) => kind switch
    {
        SpecKind.Customised => "customised",
        SpecKind.Remeasured => "measured again",
        _ => "as received",
    };

    public static string Of(SwingSource source) => source switch
    {
        SwingSource.Pendulum => "by pendulum",
        SwingSource.WorkedOut => "worked out",
        _ => "",
    };

    public static string Of(AddedMaterial material) => material switch
    {
        AddedMaterial.Lead => "lead tape",
        AddedMaterial.Tungsten => "tungsten tape (lead-free)",
        AddedMaterial.Silicone => "silicone (lead-free)",
        _ => "something else",
    };

    public static string Of(WeightUnit unit) => unit == WeightUnit.Oz ? "oz" : "g";

    public static string Of(LengthUnit unit) => unit switch
    {
        LengthUnit.Cm => "cm",
        LengthUnit.In => "in",
        _ => "mm",
    };

    public static string Of(BalanceUnit unit) => unit switch
    {
        BalanceUnit.Cm => "cm from the butt",
        BalanceUnit.In => "in from the butt",
        BalanceUnit.Points => "points, head light",
        _ => "mm from the butt",
    };

    /// <summary>Which figures give way, and by how much: "swing weight ends 31.7 kg·cm² below".</summary>
    public string Missed(Miss miss) => string.Join(", ", new[]
    {
        Gap("weight", miss.MassG, grams => Mass(grams), miss.BeyondRounding.HasFlag(Core.Customising.Planning.Figures.Mass)),
        BalanceUnit == BalanceUnit.Points && miss.BeyondRounding.HasFlag(Core.Customising.Planning.Figures.Balance)
            ? $"balance ends {Number(Math.Abs(miss.BalanceMm / 10 / BalancePoint.CmPerPoint), 1)} points more head {(miss.BalanceMm < 0 ? "light" : "heavy")}"
            : Gap("balance", miss.BalanceMm / 10, FromButt, miss.BeyondRounding.HasFlag(Core.Customising.Planning.Figures.Balance)),
        Gap("swing weight", miss.SwingWeight, Swing, miss.BeyondRounding.HasFlag(Core.Customising.Planning.Figures.SwingWeight)),
    }.Where(w => w.Length > 0));

    public static string Broken(RuleBreak broken, Sport sport, bool isNow = false)
    {
        var limits = SportFacts.Of(sport).Limits;
        var what = broken switch
        {
            RuleBreak.TooLong => $"longer than {limits.MaxLengthMm} mm",
            RuleBreak.TooHeavy => $"heavier than {limits.MaxMassG} g",
            _ => "carries mass on its strings, where only a piece that dampens vibration is allowed, outside the crossed strings",
        };
        return $"The frame {(isNow ? "is" : "would be")} against the rules: {what} ({limits.Source}; check the current edition). Fine for practice, not for matches.";
    }

    public static string Number(double value, int decimals) => Formats.Number((decimal)Math.Round(value, decimals), decimals);

    private static string Gap(string figure, double by, Func<double, string> says, bool gives) =>
        gives ? $"{figure} ends {says(Math.Abs(by))} {(by < 0 ? "below" : "above")}" : "";

    /// <summary>With what is open: "312 ± 0.2 g".</summary>
    public static string With(Uncertain value, int decimals, string unit) => $"{Number(value.Value, decimals)} ± {Number(value.Off, decimals)} {unit}";

    private static Uncertain Times(Uncertain value, double factor) => new(value.Value * factor, value.Off * factor);
}
