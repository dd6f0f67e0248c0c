using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Storage;
using TagPage.Records.Strings;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Strings;

public sealed class EditModel(StringStore store) : PageModel
{
    [BindProperty]
    public StringInput Input { get; set; } = new();

    public StringStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new StringInput
        {
            Version = Saved.Version,
            Name = Saved.Name,
            Material = Saved.Material,
            GaugeMm = Saved.GaugeMm,
            Offered = Saved.Offered,
            Note = Saved.Note,
        };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        switch (store.Change(id, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused, Saved.Version);
        }
        this.Say($"{Input.Name} is saved.");
        return Redirect("/shop/strings");
    }

    private bool Load(long id)
    {
        if (store.Get(id) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
