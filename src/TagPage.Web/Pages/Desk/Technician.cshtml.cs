using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Records.Events;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Desk;

/// <summary>A technician's own view: what is on the machine, and the next racket with all its figures.</summary>
public sealed class TechnicianModel(DeskStore desks, LiveDesks live, DeskMoveStore moves, TechnicianStore technicians) : DeskPage(desks, live)
{
    public const int BreakMinutes = 20;

    private const int MostLater = 6;

    [BindProperty(SupportsGet = true, Name = "technician")]
    public long TechnicianId { get; set; }

    public TechnicianRow Person { get; private set; } = new();

    public string Here => $"{Home}/technician/{Person.Id}";

    public IEnumerable<EntryRow> OnMine => Saved.In(JobState.OnMachine).Where(entry => entry.TechnicianId == Person.Id);

    /// <summary>When they are back, while they are on a break.</summary>
    public DateTime? BackAt => Saved.OnBreakUntil(Person);

    public EntryRow? Next => Saved.NextFor(Person.Id);

    public IEnumerable<EntryRow> Later =>
        Saved.NextUp.Where(entry => Saved.Desk.Plan.Of(entry.Number)?.Technician == Person.Id).Skip(1).Take(MostLater);

    protected override DeskBoard? Find(long id)
    {
        var board = base.Find(id);
        var technician = long.Parse((string)RouteData.Values["technician"]!, System.Globalization.CultureInfo.InvariantCulture);
        if (board?.Technician(technician) is not { } person)
            return null;
        Person = person;
        return board;
    }

    public void OnGet()
    {
    }

    public IActionResult OnPostTake(int number, bool asSecond) => Taken(moves.Take(Me, Id, number, Person.Id, asSecond), Here, $"Number {number} is yours.");

    /// <summary>The pair of labels comes at once where it was asked for, and can be asked for afterwards.</summary>
    public IActionResult OnPostStrung(int number, bool print) => this.After(moves.Strung(Me, Id, number), _ =>
        this.GoOn(print ? Labels(number) : Here, $"Number {number} is strung.", "Print the pair", Labels(number)));

    private string Labels(int number) => $"{Home}/entry/{number}?handler=labels";

    public IActionResult OnPostBack(int number) => Done(moves.PutBack(Me, Id, number), Here, $"Number {number} is waiting again.");

    public IActionResult OnPostPause() => Done(technicians.Pause(Me, Id, Person.Id, BreakMinutes), Here, "The break is in the plan.");

    public IActionResult OnPostResume() => Done(technicians.EndBreak(Me, Id, Person.Id), Here, "The break is over.");
}
