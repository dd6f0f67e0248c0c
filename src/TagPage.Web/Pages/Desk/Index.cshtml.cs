using Microsoft.AspNetCore.Mvc;
using TagPage.Core.EventDesk;
using TagPage.Records.Events;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.Desk;

public sealed class IndexModel(DeskStore desks, LiveDesks live, DeskMoveStore moves, TechnicianStore technicians) : DeskPage(desks, live)
{
    /// <summary>Whom to string last so that the others reach their matches; nobody while all do.</summary>
    public IReadOnlyList<int> Aside => Saved.AtRisk.Any(entry => Saved.Pressure(entry) == Pressure.Late)
        ? FewestLate.Heuristic(new Core.EventDesk.Desk(Saved.Now, Saved.Desk.Technicians, [.. Saved.Desk.Entries.Select(entry => entry with { Promised = entry.NeededBy ?? entry.Promised })]))
        : [];

    public void OnGet()
    {
    }

    public IActionResult OnPostTold(int number) => Done(moves.Told(Me, Id, number), Home, $"The owner of number {number} has been told.");

    public IActionResult OnPostMatch(int number) => Done(moves.PromiseMatch(Me, Id, number), Home, $"Number {number} is promised for its match.");

    public IActionResult OnPostAway(long technician, bool away) => ModelState.IsValid
        ? Done(technicians.SetAway(Me, Id, technician, away), Home, $"{Saved.Technician(technician)?.Name} is {(away ? "away; the others take over" : "back")}.")
        : NotFound();
}
