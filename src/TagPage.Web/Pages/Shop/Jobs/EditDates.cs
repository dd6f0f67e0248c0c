using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>The days of a changed job: in order, and none still to come.</summary>
internal static class EditDates
{
    public static IEnumerable<FieldFault> Of(EditInput input, DateOnly today) =>
    [
        .. JobDates.NotToCome(today,
            (nameof(input.ReceivedOn), input.ReceivedOn), (nameof(input.StrungOn), input.StrungOn),
            (nameof(input.CollectedOn), input.CollectedOn), (nameof(input.PaidOn), input.PaidOn), (nameof(input.EndedOn), input.EndedOn)),
        .. JobDates.Promised(input.ReceivedOn, input.PromisedFor),
        .. JobDates.Strung(input.ReceivedOn, input.StrungOn),
        .. JobDates.Collected(input.StrungOn, input.CollectedOn),
        .. JobDates.Ended(input.StrungOn, input.EndedOn, nameof(input.EndedOn)),
        .. EndIsWhole(input),
    ];

    private static IEnumerable<FieldFault> EndIsWhole(EditInput input)
    {
        if (input.EndedOn is null && input.EndedHow is not null)
            yield return new(nameof(input.EndedOn), "Write the day these strings ended.");
        if (input.EndedOn is not null && input.EndedHow is null)
            yield return new(nameof(input.EndedHow), "Choose how these strings ended; “unknown” is an answer too.");
    }
}
