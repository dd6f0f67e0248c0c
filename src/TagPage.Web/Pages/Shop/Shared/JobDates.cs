using TagPage.Records.Jobs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Shared;

/// <summary>A job's days in the order in which they can happen.</summary>
internal static class JobDates
{
    /// <summary>No shop's records reach further back; an earlier day is a slip in the year.</summary>
    public static readonly DateOnly Earliest = new(1970, 1, 1);

    public static IEnumerable<FieldFault> NotToCome(DateOnly today, params IEnumerable<(string Field, DateOnly? Day)> days)
    {
        foreach (var (field, day) in days)
        {
            if (day > today)
                yield return new(field, $"This day is still to come; today is {Formats.Day(today)}.");
            if (day < Earliest)
                yield return new(field, "Look at the year again.");
        }
    }

    public static IEnumerable<FieldFault> Promised(DateOnly? received, DateOnly? promised)
    {
        if (promised < received)
            yield return new(nameof(JobEntry.PromisedFor), $"The promised day is before the day it came in, {Formats.Day(received)}.");
        if (promised > received?.AddYears(1))
            yield return new(nameof(JobEntry.PromisedFor), "That is more than a year after it came in. Look at the year again.");
    }

    public static IEnumerable<FieldFault> Strung(DateOnly? received, DateOnly? strung)
    {
        if (strung < received)
            yield return new("StrungOn", $"It cannot be strung before it came in, {Formats.Day(received)}.");
    }

    public static IEnumerable<FieldFault> Collected(DateOnly? strung, DateOnly? collected)
    {
        if (collected is not null && strung is null)
            yield return new("StrungOn", "Write the day of stringing too, since it was collected.");
        if (collected < strung)
            yield return new("CollectedOn", $"It cannot be collected before it was strung, {Formats.Day(strung)}.");
    }

    public static IEnumerable<FieldFault> Ended(DateOnly? strung, DateOnly? ended, string endedField)
    {
        if (ended is not null && strung is null)
            yield return new("StrungOn", "Write the day of stringing too, since these strings have ended.");
        if (ended < strung)
            yield return new(endedField, $"Strings cannot end before they were strung, {Formats.Day(strung)}.");
    }
}
