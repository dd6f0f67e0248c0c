using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Import;
using TagPage.Web.Csv;
using C = TagPage.Web.Import.JobColumns;

namespace TagPage.Web.Import;

/// <summary>jobs.csv</summary>
internal static class JobSheet
{
    public const string File = "jobs.csv";

    public static Sheet Sheet { get; } = new(File, "One line a stringing, done or waiting.", C.All);

    public static void Read(SheetRow row, ImportContext context)
    {
        var strungOn = context.Past(row, C.StrungOn);
        var collectedOn = context.Past(row, C.CollectedOn);
        var mains = context.Batch.Strings.Find(row, C.Mains, StringSheet.File);
        var mainsBy = row.Get(C.MainsBy) ?? Supplier.Shop;
        var mainsTension = row.Get(C.MainsTension) ?? 0;
        var mainsPreStretch = row.Get(C.MainsPreStretch) ?? 0;
        var job = new JobRow
        {
            Line = row.Line,
            Ticket = row.Get(C.Ticket) ?? 0,
            Racket = context.Batch.Rackets.Find(row, C.Racket, RacketSheet.File),
            State = row.Get(C.State) ?? StateOf(strungOn, collectedOn),
            Mains = mains,
            Crosses = row.IsEmpty(C.Crosses) ? mains : context.Batch.Strings.Find(row, C.Crosses, StringSheet.File),
            MainsSuppliedBy = mainsBy,
            CrossesSuppliedBy = row.Get(C.CrossesBy) ?? mainsBy,
            MainsTension = mainsTension,
            CrossesTension = row.Get(C.CrossesTension) ?? mainsTension,
            TensionUnit = row.Get(C.TensionUnit) ?? context.Shop.TensionUnit,
            MainsPreStretch = mainsPreStretch,
            CrossesPreStretch = row.Get(C.CrossesPreStretch) ?? mainsPreStretch,
            Pieces = row.Get(C.Pieces) ?? 2,
            ReceivedOn = ReceivedOn(row, context, strungOn),
            ReceivedWhere = row.Get(C.ReceivedWhere) ?? "",
            PromisedFor = row.Get(C.PromisedFor),
            StrungOn = strungOn,
            StrungBy = row.Get(C.StrungBy) ?? "",
            Machine = row.Get(C.Machine) ?? "",
            CollectedOn = collectedOn,
            PriceMinor = context.Money(row, C.Price),
            PaidOn = context.Past(row, C.PaidOn),
            PaidHow = row.Get(C.PaidHow) ?? PaymentMethod.Before,
            Reading = row.Get(C.Reading),
            Instrument = row.Get(C.Instrument) ?? "",
            Note = row.Get(C.Note) ?? "",
            EndedOn = context.Past(row, C.EndedOn),
            EndedHow = row.Get(C.EndedHow),
        };
        if (job.Ticket > 0 && context.LineBefore(row, $"ticket {job.Ticket}") is { } line)
            row.Refuse(C.Ticket, $"Ticket {job.Ticket} is already in line {line}. Each job needs its own number.");
        JobCoherence.Check(row, context, job);
        context.Batch.Jobs.Add(Settled(job, context));
    }

    /// <summary>An old spreadsheet often has no column for what was collected and paid; long ago, both have happened.</summary>
    private static JobRow Settled(JobRow job, ImportContext context)
    {
        if (job.StrungOn is not { } strung || job is { CollectedOn: not null, PaidOn: not null })
            return job;
        if (context.SettledBefore is not { } before || strung >= before)
            return job with { LeftOpen = strung < context.Today.AddDays(-ImportLimits.DaysUntilSettled) };
        var collected = job.CollectedOn ?? strung;
        return job with
        {
            State = JobState.Collected,
            CollectedOn = collected,
            PaidOn = job.PaidOn ?? collected,
            CountedAsCollected = job.CollectedOn is null,
            CountedAsPaid = job.PaidOn is null,
        };
    }

    private static JobState StateOf(DateOnly? strungOn, DateOnly? collectedOn) =>
        collectedOn is not null ? JobState.Collected : strungOn is not null ? JobState.Strung : JobState.Waiting;

    private static DateOnly ReceivedOn(SheetRow row, ImportContext context, DateOnly? strungOn)
    {
        if (row.IsEmpty(C.ReceivedOn) && row.IsEmpty(C.StrungOn))
            row.Refuse(C.ReceivedOn, "Enter the day it came in.");
        return context.Past(row, C.ReceivedOn) ?? strungOn ?? default;
    }
}
