using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Settings.Instruments;

public sealed class EditModel(InstrumentStore store) : RecordPage<InstrumentStore.Row>
{
    [BindProperty]
    public InstrumentInput Input { get; set; } = new();

    protected override InstrumentStore.Row? Find(long id) => store.Get(id);

    public void OnGet() => Input = new InstrumentInput { Version = Saved.Version, Name = Saved.Name, Scale = Saved.Scale };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(Who.Shop, Id, Input.ToEntry()), _ => this.GoOn("/shop/settings/instruments", $"{Input.Name} is saved."), Saved.Version)
        : Page();
}
