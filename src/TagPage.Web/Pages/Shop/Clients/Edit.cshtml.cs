using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Clients;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class EditModel(ClientStore store) : PageModel
{
    [BindProperty]
    public ClientInput Input { get; set; } = new();

    public ClientStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new ClientInput
        {
            Version = Saved.Version,
            Name = Saved.Name,
            Phone = Saved.Phone is { } phone ? Phones.Shown(phone) : null,
            Mail = Saved.Mail,
            Language = Saved.Language,
            PayerId = Saved.PayerId,
            Reminders = Saved.Reminders,
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
        this.Say($"{Input.Name} is saved.{NoLongerShown(store.Get(id))}");
        return Redirect($"/shop/clients/{id}");
    }

    private string NoLongerShown(ClientStore.Row? now) =>
        (Saved.FoundChoice, Saved.FoundShowsMail) == (now?.FoundChoice, now?.FoundShowsMail) ? ""
        : now?.FoundChoice == FoundChoice.Contact ? " Finders are not shown the new address until the client agrees to that."
        : " Finders are not shown what you changed: what they write is passed on, until the client agrees to more.";

    private bool Load(long id)
    {
        if (store.Get(id) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
