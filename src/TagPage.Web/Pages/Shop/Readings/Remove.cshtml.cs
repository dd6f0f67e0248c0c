using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Readings;

public sealed class RemoveModel(LaterReadingStore store) : PageModel
{
    public ReadingRow Saved { get; private set; } = new();

    public IActionResult OnGet(long id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPost(long id)
    {
        if (!Load(id) || store.Remove(id) is Outcome.Absent)
            return NotFound();
        this.Say("The reading is taken away.");
        return Redirect($"/shop/rackets/{Saved.RacketId}#readings");
    }

    private bool Load(long id)
    {
        if (store.Get(id) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
