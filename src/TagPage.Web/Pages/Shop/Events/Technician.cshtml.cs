using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Events;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Events;

public sealed class TechnicianModel(DeskStore desks, TechnicianStore technicians) : RecordPage<DeskBoard>
{
    [BindProperty]
    public TechnicianInput Input { get; set; } = new();

    public TechnicianRow Person { get; private set; } = new();

    protected override DeskBoard? Find(long id)
    {
        var board = desks.Get(User.AtShop(), id);
        if (board?.Technician(long.Parse((string)RouteData.Values["technician"]!, CultureInfo.InvariantCulture)) is not { } person)
            return null;
        Person = person;
        return board;
    }

    public void OnGet() => Input = TechnicianInput.Of(Saved.Event, Person);

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(technicians.Change(User.AtShop(), Id, Person.Id, Input.ToEntry()), _ => this.GoOn($"/shop/events/{Id}", $"{Input.Name} is saved."))
        : Page();
}
