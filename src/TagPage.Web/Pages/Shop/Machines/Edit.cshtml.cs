using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Machines;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Machines;

public sealed class EditModel(MachineStore store) : RecordPage<MachineRow>
{
    [BindProperty]
    public MachineInput Input { get; set; } = new();

    protected override MachineRow? Find(long id) => store.Get(id);

    public void OnGet() => Input = new MachineInput { Version = Saved.Version, Name = Saved.Name, Kind = Saved.Kind, EveryDays = Saved.EveryDays, IsRetired = Saved.IsRetired };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn($"/shop/machines/{Id}", $"{Input.Name} is saved."), Saved.Version)
        : Page();
}
