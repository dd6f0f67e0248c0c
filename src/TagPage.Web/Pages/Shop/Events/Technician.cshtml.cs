using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

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

    public void OnGet() => Input = TechnicianInput.Of(Saved.Event, Person);

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(technicians.Change(Who.Shop, Id, Person.Id, Input.ToEntry()), _ => this.GoOn($"/shop/events/{Id}", $"{Input.Name} is saved."))
        : Page();
}
