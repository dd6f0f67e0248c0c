using TagPage.Core.Jobs;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Web.Csv;
using TagPage.Web.Words;
using C = TagPage.Web.Import.JobColumns;

namespace TagPage.Web.Import;

/// <summary>Whether the cells of a job fit each other. An unreadable cell is not reported twice.</summary>
internal static class JobCoherence
{
    public static void Check(SheetRow row, ImportContext context, JobRow job)
    {
        CheckState(row, job);
        CheckOrder(row, C.StrungOn, job.StrungOn, job.ReceivedOn, "it came in");
        CheckOrder(row, C.CollectedOn, job.CollectedOn, job.StrungOn, "it was strung");
        CheckOrder(row, C.PromisedFor, job.PromisedFor, job.ReceivedOn, "it came in");
        CheckOrder(row, C.EndedOn, job.EndedOn, job.StrungOn, "it was strung");
        CheckEnd(row);
        CheckReading(row);
        CheckPieces(row, job);
        CheckTension(row, context, job, C.MainsTension, job.MainsTension);
        if (!row.IsEmpty(C.CrossesTension))
            CheckTension(row, context, job, C.CrossesTension, job.CrossesTension);
    }

    private static void CheckState(SheetRow row, JobRow job)
    {
        if (row.IsRefused(C.State))
            return;
        var name = EnglishNames.Of(job.State);
        CheckPresence(row, C.StrungOn, job.State is JobState.Strung or JobState.Collected, name);
        CheckPresence(row, C.CollectedOn, job.State is JobState.Collected, name);
    }

    private static void CheckPresence(SheetRow row, Column<DateOnly?> column, bool needed, string state)
    {
        if (needed && row.IsEmpty(column))
            row.Refuse(column, $"The state is “{state}”: enter the day, or change the state.");
        else if (!needed && !row.IsEmpty(column))
            row.Refuse(column, $"The state is “{state}”: leave this empty, or change the state.");
    }

    private static void CheckOrder(SheetRow row, Column<DateOnly?> column, DateOnly? day, DateOnly? earlier, string what)
    {
        if (day < earlier)
            row.Refuse(column, $"This is before the day {what}, {Formats.Day(earlier)}. Correct one of the two.");
    }

    private static void CheckEnd(SheetRow row)
    {
        if (row.IsEmpty(C.EndedOn) && !row.IsEmpty(C.EndedHow))
            row.Refuse(C.EndedOn, "Enter the day these strings ended, or leave ended_how empty.");
        if (!row.IsEmpty(C.EndedOn) && row.IsEmpty(C.EndedHow))
            row.Refuse(C.EndedHow, $"Enter how these strings ended: {C.EndedHow.Takes}.");
        if (!row.IsEmpty(C.EndedOn) && row.IsEmpty(C.StrungOn))
            row.Refuse(C.EndedOn, "These strings were never strung: leave this empty, or fill in strung_on.");
    }

    private static void CheckReading(SheetRow row)
    {
        if (!row.IsEmpty(C.Reading) && row.IsEmpty(C.Instrument))
            row.Refuse(C.Instrument, "Name the instrument of the reading; readings of different instruments cannot be compared.");
        if (row.IsEmpty(C.Reading) && !row.IsEmpty(C.Instrument))
            row.Refuse(C.Reading, "Enter the reading, or leave the instrument empty.");
        if (!row.IsEmpty(C.Reading) && row.IsEmpty(C.StrungOn))
            row.Refuse(C.Reading, "A reading is taken right after stringing: leave this empty, or fill in strung_on.");
    }

    private static void CheckPieces(SheetRow row, JobRow job)
    {
        if (job is { Pieces: 1, Mains: { } mains, Crosses: { } crosses } && mains != crosses)
            row.Refuse(C.Pieces, "One piece is one string: enter 2, or leave crosses_string empty.");
    }

    /// <summary>A tension no machine pulls is refused; one outside the sport's usual range is pointed out, since it can crack a frame.</summary>
    private static void CheckTension(SheetRow row, ImportContext context, JobRow job, Column<decimal?> column, decimal value)
    {
        if (job.Racket is null || row.IsRefused(column) || row.IsEmpty(column) || row.IsRefused(C.TensionUnit))
            return;
        var tension = new Tension(value, job.TensionUnit);
        var facts = SportFacts.Of(job.Racket.Sport);
        switch (TensionCheck.Of(job.Racket.Sport, tension))
        {
            case TensionVerdict.Impossible:
                row.Refuse(column, $"No machine pulls {tension}. Check the number and tension_unit.");
                break;
            case TensionVerdict.Unusual:
                context.Notices.Add(new Problem(JobSheet.File, row.Line, column.Name,
                    $"{tension} is outside the {facts.UsualMinLb} to {facts.UsualMaxLb} lb usual in {EnglishNames.Of(job.Racket.Sport)}. Above the range printed on the frame, the frame can crack."));
                break;
        }
    }
}
