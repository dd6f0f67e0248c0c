using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>Withdraws one private link.</summary>
public sealed class RevokeModel(OwnPageLinkStore links) : PageModel
{
    public IActionResult OnGet(long id) => links.Get(id) is null ? NotFound() : Redirect($"/shop/corner/link/{id}");

    public IActionResult OnPost(long id)
    {
        if (links.Get(id) is not { } link || links.Revoke(id) is Outcome.Absent)
            return NotFound();
        this.Say("The link is withdrawn, and the browsers it signed in are signed out.");
        return Redirect($"/shop/corner/{link.ClientId}");
    }
}
