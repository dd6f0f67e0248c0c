using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Clients;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Payers;

public sealed class EditModel(PayerStore store) : PageModel
{
    [BindProperty]
    public PayerInput Input { get; set; } = new();

    public PayerStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new PayerInput
        {
            Version = Saved.Version,
            Name = Saved.Name,
            Phone = Saved.Phone is { } phone ? Phones.Shown(phone) : null,
            Mail = Saved.Mail,
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
        return Redirect("/shop/payers");
    }

    private bool Load(long id)
    {
        if (store.Get(id) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
