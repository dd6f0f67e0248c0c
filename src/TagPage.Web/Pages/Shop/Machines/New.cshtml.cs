using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Machines;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Machines;

public sealed class NewModel(MachineStore store) : PageModel
{
    /// <summary>Common practice; how often is for the shop to know.</summary>
    private const int UsualDays = 30;

    [BindProperty]
    public MachineInput Input { get; set; } = new();

    public void OnGet() => Input = new MachineInput { FormKey = FormKey.New(), EveryDays = UsualDays };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Add(User.AtShop(), Input.ToEntry()), id => this.GoOn($"/shop/machines/{id}", $"{Input.Name} is on the list. Note its first check."))
        : Page();
}
