using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.Shop.Payers;

public sealed class NewModel(PayerStore store) : PageModel
{
    [BindProperty]
    public PayerInput Input { get; set; } = new();

    public void OnGet() => Input = new PayerInput { FormKey = FormKey.New() };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (store.Add(Input) is Outcome.Refused refused)
            return this.Refuse(refused);
        this.Say($"{Input.Name} can now be chosen as a client’s payer.");
        return Redirect("/shop/payers");
    }
}
