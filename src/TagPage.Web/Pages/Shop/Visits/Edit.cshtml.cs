using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Visits;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Visits;

public sealed class EditModel(VisitStore store) : RecordPage<VisitRow>
{
    [BindProperty]
    public VisitInput Input { get; set; } = new();

    protected override VisitRow? Find(long id) => store.Get(User.AtShop(), id);

    public void OnGet() => Input = new VisitInput { Version = Saved.Version, DoneOn = Saved.DoneOn, Works = [.. Saved.Works], Note = Saved.Note };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn($"/shop/visits/{Id}", $"Ticket {Saved.Ticket} is saved."), Saved.Version)
        : Page();
}
