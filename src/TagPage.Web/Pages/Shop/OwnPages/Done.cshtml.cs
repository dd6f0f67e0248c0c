using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>Ticks off what a client asked for.</summary>
public sealed class DoneModel(ClientRequestStore requests) : PageModel
{
    public IActionResult OnGet() => Redirect("/shop");

    /// <param name="id">Of the request.</param>
    /// <param name="list">It was pressed on the list of all requests, which is shown again.</param>
    public IActionResult OnPost(long id, bool list)
    {
        if (requests.Done(id) is Outcome.Absent)
            return NotFound();
        this.Say("Ticked off.");
        return Redirect(list ? "/shop/corner/requests" : "/shop");
    }
}
