using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Stops;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Stops;

public sealed class EditModel(StopStore store) : RecordPage<StopRow>
{
    [BindProperty]
    public StopInput Input { get; set; } = new();

    protected override StopRow? Find(long id) => store.Get(id);

    public void OnGet() => Input = new StopInput { Version = Saved.Version, Name = Saved.Name, Kind = Saved.Kind, IsEnded = Saved.IsEnded };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn("/shop/stops", $"{Input.Name} is saved."), Saved.Version)
        : Page();
}
