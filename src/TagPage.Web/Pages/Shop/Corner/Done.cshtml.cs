using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.Shop.Corner;

/// <summary>Ticks off what a client asked for.</summary>
public sealed class DoneModel(ClientRequestStore requests) : PageModel
{
    public IActionResult OnGet() => Redirect("/shop");

    public IActionResult OnPost(long id)
    {
        if (requests.Done(id) is Outcome.Absent)
            return NotFound();
        this.Say("Ticked off.");
        return Redirect("/shop");
    }
}
