using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Reminders;

/// <summary>Stops a batch of reminders.</summary>
public sealed class StopModel(BatchStore store) : PageModel
{
    public IActionResult OnGet(long id) => store.Get(id) is null ? NotFound() : Redirect($"/shop/nudges/batch/{id}");

    public IActionResult OnPost(long id)
    {
        if (store.Stop(id) is Outcome.Absent)
            return NotFound();
        this.Say("Stopped. Those already sent cannot be called back; the rest will not go out.");
        return Redirect($"/shop/nudges/batch/{id}");
    }
}
