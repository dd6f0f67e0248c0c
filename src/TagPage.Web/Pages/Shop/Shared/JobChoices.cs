using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Records.Jobs;
using TagPage.Records.Stops;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Shared;

/// <summary>All that a job's form offers to choose from.</summary>
public sealed record JobChoices(
    IReadOnlyList<SelectListItem> Mains, IReadOnlyList<SelectListItem> Crosses, IReadOnlyList<SelectListItem> Instruments, LastUsedStore.Suggestions Suggest)
{
    /// <summary>Where rackets are left and collected besides the shop's own bench; none where it has no such places.</summary>
    public IReadOnlyList<StopRow> Stops { get; init; } = [];

    public IReadOnlyList<SelectListItem> LeftAt => LeftAtOf(Stops);

    public IReadOnlyList<SelectListItem> CollectAt => CollectAtOf(Stops);

    public static IReadOnlyList<SelectListItem> LeftAtOf(IEnumerable<StopRow> stops) => [new SelectListItem(StopWords.OwnBench, ""), .. stops.Select(ToItem)];

    public static IReadOnlyList<SelectListItem> CollectAtOf(IEnumerable<StopRow> stops) => [new SelectListItem("the same place", ""), new SelectListItem(StopWords.OwnBench, "0"), .. stops.Select(ToItem)];

    private static SelectListItem ToItem(StopRow stop) => new(stop.Name, $"{stop.Id}");
}

/// <summary>Collects what a job's form offers.</summary>
public sealed class JobChoicesReader(StringPickStore strings, LastUsedStore habits, StopStore stops)
{
    /// <param name="known">Jobs whose strings stay on offer even when the catalogue no longer has them for new jobs.</param>
    public JobChoices Of(params IEnumerable<JobRow?> known)
    {
        var items = strings.Choices(known.OfType<JobRow>().SelectMany(job => new[] { job.MainsId, job.CrossesId }).Distinct()).Select(ToItem).ToList();
        return new JobChoices(
            [new SelectListItem("Choose", ""), .. items],
            [new SelectListItem("Same as the mains", ""), .. items],
            [new SelectListItem("No reading", ""), .. habits.Instruments().Select(i => new SelectListItem($"{i.Name} ({EnglishNames.Of(i.Scale)})", $"{i.Id}"))],
            habits.Suggest())
        {
            Stops = stops.InUse(),
        };
    }

    /// <summary>The same for a ticket that is changed: its stops stay on offer even when they are no longer used.</summary>
    public JobChoices OfTicket(JobRow ticket) =>
        Of(ticket) with { Stops = [.. stops.List().Where(stop => !stop.IsEnded || stop.Id == ticket.LeftAtId || stop.Id == ticket.CollectAtId)] };

    private static SelectListItem ToItem(StringPickStore.Choice s) =>
        new($"{Formats.StringName(s.Name, s.GaugeMm)} mm, {EnglishNames.Of(s.Material)}", $"{s.Id}");
}
