using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>A client asked the shop to delete their data.</summary>
public sealed class ForgetModel(ClientOnFileStore clients, ForgetStore store) : PageModel
{
    public IActionResult OnGet(long id) => clients.Get(id) is null ? NotFound() : Redirect($"/shop/corner/{id}");

    public IActionResult OnPost(long id)
    {
        switch (store.Ask(id, session: null))
        {
            case ForgetStore.Answer.Absent:
                return NotFound();
            case ForgetStore.Answer.Open:
                this.Say("Not yet: a ticket of this client has still to be strung, collected or paid for.");
                break;
            default:
                this.Say("The client’s data will be deleted in 7 days. Until then you can undo it.");
                break;
        }
        return Redirect($"/shop/corner/{id}");
    }
}
