using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Readings;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings.Instruments;

public sealed class EditModel(InstrumentStore store) : RecordPage<InstrumentStore.Row>
{
    [BindProperty]
    public InstrumentInput Input { get; set; } = new();

    protected override InstrumentStore.Row? Find(long id) => store.Get(id);

    public void OnGet() => Input = new InstrumentInput { Version = Saved.Version, Name = Saved.Name, Scale = Saved.Scale };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn("/shop/settings/instruments", $"{Input.Name} is saved."), Saved.Version)
        : Page();
}
