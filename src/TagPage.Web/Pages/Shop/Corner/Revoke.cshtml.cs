using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Pages.My;

namespace TagPage.Web.Pages.Shop.Corner;

/// <summary>Takes one private link back.</summary>
public sealed class RevokeModel(CornerLinkStore links) : PageModel
{
    public IActionResult OnGet(long id) => links.Get(id) is null ? NotFound() : Redirect($"/shop/corner/link/{id}");

    public IActionResult OnPost(long id)
    {
        if (links.Get(id) is not { } link || links.Revoke(id) is Outcome.Absent)
            return NotFound();
        this.Say("The link is taken back, and the browsers it opened are signed out.");
        return Redirect($"/shop/corner/{link.ClientId}");
    }
}
