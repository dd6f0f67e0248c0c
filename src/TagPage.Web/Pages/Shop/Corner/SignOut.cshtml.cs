using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Forms;
using TagPage.Web.Pages.My;

namespace TagPage.Web.Pages.Shop.Corner;

/// <summary>Takes every private link of a client back.</summary>
public sealed class SignOutModel(ClientOnFileStore clients, CornerSessionStore sessions) : PageModel
{
    public IActionResult OnGet(long id) => clients.Get(id) is null ? NotFound() : Redirect($"/shop/corner/{id}");

    public IActionResult OnPost(long id)
    {
        if (clients.Get(id) is null)
            return NotFound();
        sessions.EndAll(id);
        this.Say("All links are taken back, and every browser is signed out.");
        return Redirect($"/shop/corner/{id}");
    }
}
