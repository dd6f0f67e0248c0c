using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Pauses;

public sealed class EditModel(PauseStore store) : PageModel
{
    [BindProperty]
    public PauseInput Input { get; set; } = new();

    public PauseStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new PauseInput { FromOn = Saved.FromOn, ToOn = Saved.ToOn, Note = Saved.Note };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        if (store.Change(id, Input.ToEntry()) is Outcome.Absent)
            return NotFound();
        this.Say("The pause is saved.");
        return Redirect($"/shop/players/{Saved.PlayerId}");
    }

    private bool Load(long id)
    {
        if (store.Get(id) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
