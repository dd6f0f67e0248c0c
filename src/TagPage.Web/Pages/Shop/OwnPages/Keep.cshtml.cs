using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>The data is kept after all.</summary>
public sealed class KeepModel(ClientOnFileStore clients, ForgetStore store) : PageModel
{
    public IActionResult OnGet(long id) => clients.Get(id) is null ? NotFound() : Redirect($"/shop/corner/{id}");

    public IActionResult OnPost(long id)
    {
        if (clients.Get(id) is null)
            return NotFound();
        store.Undo(id);
        this.Say("The client’s data is kept.");
        return Redirect($"/shop/corner/{id}");
    }
}
