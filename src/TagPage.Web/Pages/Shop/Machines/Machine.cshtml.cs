using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Machines;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Machines;

/// <summary>A machine’s log, and a new line of it.</summary>
public sealed class MachineModel(MachineStore store, ShopStore shops, ShopClock clock) : RecordPage<MachineRow>
{
    [BindProperty]
    public CheckInput Input { get; set; } = new();

    public DateOnly Today => clock.Today;

    public IReadOnlyList<CheckRow> Checks => store.Checks(Id);

    protected override MachineRow? Find(long id) => store.Get(id);

    public void OnGet() => Input = new CheckInput { FormKey = FormKey.New(), CheckedOn = clock.Today, Unit = shops.Get().TensionUnit };

    /// <summary>Not the newest where an earlier one is entered late.</summary>
    private CheckRow Noted => new() { Reference = Input.Reference!.Value, Measured = Input.Measured!.Value };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Check(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn($"/shop/machines/{Id}", $"The check is noted: {MachineWords.Deviation(Noted)}."))
        : Page();
}
