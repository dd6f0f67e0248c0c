using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Hours;

public sealed class RemoveModel(HoursStore store) : PageModel
{
    public HoursStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPost(long id)
    {
        if (!Load(id) || store.Remove(id) is Outcome.Absent)
            return NotFound();
        this.Say("The hours are taken away.");
        return Redirect($"/shop/rackets/{Saved.RacketId}#played");
    }

    private bool Load(long id)
    {
        if (store.Get(id) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
