using TagPage.Core.Jobs;

namespace TagPage.Web.Pages.Shop.Shared;

/// <summary>The address that takes back a move of jobs, from the state it brought them to.</summary>
public static class UndoLink
{
    public static string Of(JobState from, params IEnumerable<long> jobs) =>
        $"/shop/jobs/undo?from={from}&{string.Join('&', jobs.Select(id => FormattableString.Invariant($"job={id}")))}";
}
