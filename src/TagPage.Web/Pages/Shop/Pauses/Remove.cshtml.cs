using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Pauses;

/// <summary>Takes a pause away; one press on its page.</summary>
public sealed class RemoveModel(PauseStore store) : PageModel
{
    public IActionResult OnGet(long id) => store.Get(id) is null ? NotFound() : Redirect($"/shop/pauses/edit/{id}");

    public IActionResult OnPost(long id)
    {
        if (store.Get(id) is not { } saved || store.Remove(id) is Outcome.Absent)
            return NotFound();
        this.Say("The pause is taken away.");
        return Redirect($"/shop/players/{saved.PlayerId}");
    }
}
