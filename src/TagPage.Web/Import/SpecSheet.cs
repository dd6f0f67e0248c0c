using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Web.Csv;
using TagPage.Web.Words;
using Col = TagPage.Web.Import.SpecColumns;

namespace TagPage.Web.Import;

/// <summary>specs.csv</summary>
internal static class SpecSheet
{
    public const string File = "specs.csv";

    public static Sheet Sheet { get; } = new(File, "What a racket measured, and when. You can leave this file out.", Col.All) { GivenAs = "spec.csv" };

    public static void Read(SheetRow row, ImportContext context)
    {
        var racket = context.Batch.Rackets.Find(row, Col.Racket, RacketSheet.File);
        var read = Entry(row, context);
        Check(row, read);
        var spec = SpecWorkings.Complete(read, context.Shop.CustomisingValues.Gravity);
        context.Batch.Specs.Add(new SpecRow { Line = row.Line, Racket = racket, Spec = spec });
        if (racket is not null)
            Notice(row, context, SpecRules.Oddities(racket.Sport, context.Today, spec));
    }

    private static SpecEntry Entry(SheetRow row, ImportContext context) => new()
    {
        MeasuredOn = context.Past(row, Col.MeasuredOn) ?? default,
        Kind = row.Get(Col.Kind) ?? SpecKind.Received,
        Weight = row.Get(Col.WeightG) ?? row.Get(Col.Weight),
        WeightUnit = row.Get(Col.WeightUnit) ?? default,
        Length = row.Get(Col.LengthMm) ?? row.Get(Col.Length),
        LengthUnit = row.Get(Col.LengthUnit) ?? default,
        Balance = row.Get(Col.BalanceMm) ?? row.Get(Col.Balance),
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

    private static void Check(SheetRow row, SpecEntry read)
    {
        if (Col.Measured.All(row.IsEmpty))
            row.Refuse(Col.WeightG, "Nothing was measured here. Enter at least one number, or remove the line.");
        if (!row.IsEmpty(Col.Stiffness) && row.IsEmpty(Col.StiffnessScale))
            row.Refuse(Col.StiffnessScale, "Name the scale of the stiffness; numbers of different scales cannot be compared.");
        if (read.SwingSource == SwingSource.Pendulum && read.PendulumPeriodS is null)
            row.Refuse(Col.PendulumPeriod, "Enter how long a swing took: the swing weight comes from a pendulum.");
        Once(row, Col.WeightG, Col.Weight, Col.WeightUnit, read.WeightUnit != WeightUnit.G);
        Once(row, Col.LengthMm, Col.Length, Col.LengthUnit, read.LengthUnit != LengthUnit.Mm);
        Once(row, Col.BalanceMm, Col.Balance, Col.BalanceUnit, read.BalanceUnit != BalanceUnit.Mm);
        foreach (var (field, says) in SpecFaults.Of(read).Where(fault => Reads(row, fault.Field)))
            row.Refuse(ColumnOf(row, field), says);
    }

    // What does not read is told by its own cell, not by what would follow from it.
    private static bool Reads(SheetRow row, string field) => field switch
    {
        nameof(SpecEntry.Weight) => !row.IsRefused(Col.WeightUnit),
        nameof(SpecEntry.Length) or nameof(SpecEntry.PendulumAxis) => !row.IsRefused(Col.LengthUnit),
        nameof(SpecEntry.Balance) => !row.IsRefused(Col.BalanceUnit),
        nameof(SpecEntry.SwingWeight) => true,
        _ => !Col.Figures.Any(row.IsRefused),
    };

    // What the form would ask about stops nothing here.
    private static void Notice(SheetRow row, ImportContext context, IEnumerable<Oddity> oddities)
    {
        foreach (var odd in oddities.Where(odd => odd is not MeasuredInFuture))
        {
            var column = ColumnOf(row, odd.Field);
            if (!row.IsRefused(column))
                context.Notices.Add(new Problem(File, row.Line, column.Name, $"{SpecQuestions.Says(odd)} It is brought in as it is."));
        }
    }

    // The cell that a figure stands in, or follows from.
    private static Column ColumnOf(SheetRow row, string field) => field switch
    {
        nameof(SpecEntry.Weight) => Filled(row, Col.WeightG, Col.Weight),
        nameof(SpecEntry.Length) => Filled(row, Col.LengthMm, Col.Length),
        nameof(SpecEntry.Balance) => Filled(row, Col.BalanceMm, Col.Balance, Col.TipWeight),
        nameof(SpecEntry.TipWeight) => Col.TipWeight,
        nameof(SpecEntry.PendulumAxis) => Col.PendulumAxis,
        nameof(SpecEntry.PendulumPeriodS) => Col.PendulumPeriod,
        _ => Filled(row, Col.SwingWeight, Col.PendulumPeriod),
    };

    private static Column Filled(SheetRow row, params Column[] columns) => columns.FirstOrDefault(column => !row.IsEmpty(column)) ?? columns[0];

    private static void Once(SheetRow row, Column fixedUnit, Column anyUnit, Column unit, bool isOther)
    {
        if (!row.IsEmpty(fixedUnit) && !row.IsEmpty(anyUnit))
            row.Refuse(anyUnit, $"Fill in either {fixedUnit.Name} or {anyUnit.Name}.");
        else if (!row.IsEmpty(fixedUnit) && isOther)
            row.Refuse(unit, $"{fixedUnit.Name} has its own unit. Write it into {anyUnit.Name}.");
    }
}
