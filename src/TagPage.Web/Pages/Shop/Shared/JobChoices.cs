using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Records.Jobs;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Shared;

/// <summary>All that a job's form offers to choose from.</summary>
public sealed record JobChoices(
    IReadOnlyList<SelectListItem> Mains, IReadOnlyList<SelectListItem> Crosses, IReadOnlyList<SelectListItem> Instruments, LastUsedStore.Suggestions Suggest);

/// <summary>Collects what a job's form offers.</summary>
public sealed class JobChoicesReader(StringPickStore strings, LastUsedStore habits)
{
    /// <param name="known">Jobs whose strings stay on offer even when the catalogue no longer has them for new jobs.</param>
    public JobChoices Of(params IEnumerable<JobRow?> known)
    {
        var items = strings.Choices(known.OfType<JobRow>().SelectMany(job => new[] { job.MainsId, job.CrossesId }).Distinct()).Select(ToItem).ToList();
        return new JobChoices(
            [new SelectListItem("Choose", ""), .. items],
            [new SelectListItem("Same as the mains", ""), .. items],
            [new SelectListItem("No reading", ""), .. habits.Instruments().Select(i => new SelectListItem($"{i.Name} ({EnglishNames.Of(i.Scale)})", $"{i.Id}"))],
            habits.Suggest());
    }

    private static SelectListItem ToItem(StringPickStore.Choice s) =>
        new($"{Formats.StringName(s.Name, s.GaugeMm)} mm, {EnglishNames.Of(s.Material)}", $"{s.Id}");
}
