using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.LostAndFound;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class FoundModel(FoundChoiceStore store) : PageModel
{
    [BindProperty]
    public FoundChoiceInput Input { get; set; } = new();

    public long Id { get; private set; }

    public FoundChoiceStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new FoundChoiceInput { Version = Saved.Version, Choice = Saved.Choice, Always = Saved.Always, ShowsMail = Saved.ShowsMail };
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
        this.Say($"What finders get is saved for {Saved.Name}.");
        return Redirect($"/shop/clients/{id}");
    }

    private bool Load(long id)
    {
        if (store.Get(id) is not { } row)
            return false;
        (Id, Saved) = (id, row);
        return true;
    }
}
