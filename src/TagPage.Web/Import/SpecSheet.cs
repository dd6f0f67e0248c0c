using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Records.Specs;
using TagPage.Web.Csv;
using TagPage.Web.Words;
using Col = TagPage.Web.Import.SpecColumns;

namespace TagPage.Web.Import;

/// <summary>specs.csv</summary>
internal static class SpecSheet
{
    public const string File = "specs.csv";

    public static Sheet Sheet { get; } = new(File, "What a racket measured, and when. You can leave this file out.", Col.All);

    public static void Read(SheetRow row, ImportContext context)
    {
        var (weight, length, balance) = (row.Get(Col.WeightG) ?? row.Get(Col.Weight), row.Get(Col.LengthMm) ?? row.Get(Col.Length), row.Get(Col.BalanceMm) ?? row.Get(Col.Balance));
        var spec = new SpecRow
        {
            Line = row.Line,
            Racket = context.Batch.Rackets.Find(row, Col.Racket, RacketSheet.File),
            MeasuredOn = context.Past(row, Col.MeasuredOn) ?? default,
            Kind = row.Get(Col.Kind) ?? SpecKind.Received,
            Weight = weight,
            WeightUnit = row.Get(Col.WeightUnit) ?? default,
            Length = length,
            LengthUnit = row.Get(Col.LengthUnit) ?? default,
            Balance = balance,
            BalanceUnit = row.Get(Col.BalanceUnit) ?? default,
            TipWeight = row.Get(Col.TipWeight),
            SwingWeight = row.Get(Col.SwingWeight),
            SwingSource = row.Get(Col.SwingSource) ?? default,
            PendulumAxis = row.Get(Col.PendulumAxis),
            PendulumPeriodS = row.Get(Col.PendulumPeriod),
            PendulumOffS = row.Get(Col.PendulumOff),
            WeightOffG = row.Get(Col.WeightOff),
            BalanceOffMm = row.Get(Col.BalanceOff),
            SwingWeightOff = row.Get(Col.SwingWeightOff),
            WeightBalanceR = row.Get(Col.WeightBalanceR),
            WeightSwingR = row.Get(Col.WeightSwingR),
            BalanceSwingR = row.Get(Col.BalanceSwingR),
            Stiffness = row.Get(Col.Stiffness),
            StiffnessScale = row.Get(Col.StiffnessScale) ?? "",
            Strung = row.Get(Col.Strung) ?? true,
            GripOn = row.Get(Col.GripOn) ?? true,
            DampenerOn = row.Get(Col.DampenerOn) ?? false,
            Note = row.Get(Col.Note) ?? "",
        };
        context.Batch.Specs.Add(spec);
        Check(row, spec);
        Notice(row, context, spec);
    }

    private static void Check(SheetRow row, SpecRow spec)
    {
        if (Col.Measured.All(row.IsEmpty))
            row.Refuse(Col.WeightG, "Nothing was measured here. Enter at least one number, or remove the line.");
        if (!row.IsEmpty(Col.Stiffness) && row.IsEmpty(Col.StiffnessScale))
            row.Refuse(Col.StiffnessScale, "Name the scale of the stiffness; numbers of different scales cannot be compared.");
        if (spec.SwingSource == SwingSource.Pendulum && spec.PendulumPeriodS is null)
            row.Refuse(Col.PendulumPeriod, "Enter how long a swing took: the swing weight comes from a pendulum.");
        Once(row, Col.WeightG, Col.Weight, Col.WeightUnit, spec.WeightUnit != WeightUnit.G);
        Once(row, Col.LengthMm, Col.Length, Col.LengthUnit, spec.LengthUnit != LengthUnit.Mm);
        Once(row, Col.BalanceMm, Col.Balance, Col.BalanceUnit, spec.BalanceUnit != BalanceUnit.Mm);
        CheckRanges(row, spec);
    }

    // What the form would ask about stops nothing here.
    private static void Notice(SheetRow row, ImportContext context, SpecRow spec)
    {
        if (spec.Racket is null)
            return;
        foreach (var odd in SpecRules.Oddities(spec.Racket.Sport, context.Today, Entry(spec)))
        {
            var column = odd.Field switch
            {
                nameof(SpecEntry.Weight) => Filled(row, Col.WeightG, Col.Weight),
                nameof(SpecEntry.Balance) => Filled(row, Col.BalanceMm, Col.Balance),
                nameof(SpecEntry.Length) => Filled(row, Col.LengthMm, Col.Length),
                _ => Col.SwingWeight,
            };
            if (odd is not MeasuredInFuture && !row.IsRefused(column))
                context.Notices.Add(new Problem(File, row.Line, column.Name, $"{SpecQuestions.Says(odd)} It comes in as it stands."));
        }
    }

    private static Column Filled(SheetRow row, Column fixedUnit, Column anyUnit) => row.IsEmpty(fixedUnit) ? anyUnit : fixedUnit;

    private static SpecEntry Entry(SpecRow spec) => new()
    {
        MeasuredOn = spec.MeasuredOn,
        Weight = spec.Weight,
        WeightUnit = spec.WeightUnit,
        Length = spec.Length,
        LengthUnit = spec.LengthUnit,
        Balance = spec.Balance,
        BalanceUnit = spec.BalanceUnit,
        SwingWeight = spec.SwingWeight,
    };

    private static void Once(SheetRow row, Column fixedUnit, Column anyUnit, Column unit, bool isOther)
    {
        if (!row.IsEmpty(fixedUnit) && !row.IsEmpty(anyUnit))
            row.Refuse(anyUnit, $"Fill in either {fixedUnit.Name} or {anyUnit.Name}.");
        else if (!row.IsEmpty(fixedUnit) && isOther)
            row.Refuse(unit, $"{fixedUnit.Name} has its own unit. Write it into {anyUnit.Name}.");
    }

    // After the cells: what is typed in another unit has the same limits.
    private static void CheckRanges(SheetRow row, SpecRow spec)
    {
        var length = spec.Length is { } whole ? new Distance(whole, spec.LengthUnit).Mm : (decimal?)null;
        if (!row.IsEmpty(Col.Weight) && spec.Weight is { } weight && new Weight(weight, spec.WeightUnit).Grams is < 50 or > 500)
            row.Refuse(Col.Weight, "A racket weighs between 50 and 500 g.");
        if (!row.IsEmpty(Col.Length) && length is (< 300 or > 800))
            row.Refuse(Col.Length, "A racket is between 300 and 800 mm long.");
        if (spec.Balance is not null && spec.BalanceUnit == BalanceUnit.Points && length is null)
            row.Refuse(Col.Balance, "Enter the length as well: points count from the frame’s middle.");
        else if (!row.IsEmpty(Col.Balance) && spec.Balance is { } balance && new Balance(balance, spec.BalanceUnit).Mm(length) is < 100 or > 500)
            row.Refuse(Col.Balance, "A balance point lies between 100 and 500 mm from the butt.");
        if (spec.PendulumAxis is { } axis && new Distance(axis, spec.LengthUnit).Mm > 800)
            row.Refuse(Col.PendulumAxis, "It hangs between 0 and 800 mm from the butt.");
    }
}
