using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Events;

public sealed class TechnicianModel(DeskStore desks, TechnicianStore technicians) : RecordPage<DeskBoard>
{
    [BindProperty]
    public TechnicianInput Input { get; set; } = new();

    public TechnicianRow Person { get; private set; } = new();

    protected override DeskBoard? Find(long id)
    {
        var board = desks.Get(Who.Shop, id);
        if (board?.Technician(long.Parse((string)RouteData.Values["technician"]!, CultureInfo.InvariantCulture)) is not { } person)
            return null;
        Person = person;
        return board;
    }

    public void OnGet() => Input = new TechnicianInput { Name = Person.Name, Machine = Person.Machine, Hours = Hours };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(technicians.Change(Who.Shop, Id, Person.Id, Input.ToEntry()), _ => this.GoOn($"/shop/events/{Id}", $"{Input.Name} is saved."))
        : Page();

    // Of the first day that has any: that is what is offered for all.
    private string Hours => string.Join(", ", Person.Hours.GroupBy(time => time.From.Date).FirstOrDefault()
        ?.Select(time => Formats.Hours(time.From, time.To, "-")) ?? []);
}
