using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.LostAndFound;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Clients;

/// <summary>One press on the client's page withdraws what finders may get.</summary>
public sealed class WithdrawModel(FoundChoiceStore store) : PageModel
{
    public IActionResult OnGet(long id) => store.Get(id) is null ? NotFound() : Redirect($"/shop/clients/{id}");

    public IActionResult OnPost(long id)
    {
        if (store.Withdraw(id) is Outcome.Absent)
            return NotFound();
        this.Say("From now on, finders get only the shop’s contact details.");
        return Redirect($"/shop/clients/{id}");
    }
}
