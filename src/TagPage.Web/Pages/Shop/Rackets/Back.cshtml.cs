using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.LostAndFound;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>A lost racket is back; one press on its card says so.</summary>
public sealed class BackModel(LostStore store) : PageModel
{
    public IActionResult OnGet(long id) => store.Get(Who.Shop, id) is null ? NotFound() : Redirect($"/shop/rackets/{id}");

    public IActionResult OnPost(long id)
    {
        if (store.Back(Who.Shop, id) is Outcome.Absent)
            return NotFound();
        this.Say("The racket is back and no longer marked as lost.");
        return Redirect($"/shop/rackets/{id}");
    }
}
