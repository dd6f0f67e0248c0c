using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>Withdraws every link a client has.</summary>
public sealed class SignOutModel(ClientOnFileStore clients, OwnPageSessionStore sessions) : PageModel
{
    public IActionResult OnGet(long id) => clients.Get(id) is null ? NotFound() : Redirect($"/shop/corner/{id}");

    public IActionResult OnPost(long id)
    {
        if (clients.Get(id) is null)
            return NotFound();
        sessions.EndAll(id);
        this.Say("All links of this client are withdrawn, including those in reminders and notices, and every browser is signed out.");
        return Redirect($"/shop/corner/{id}");
    }
}
