using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Clients;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class EditModel(ClientStore store) : RecordPage<ClientStore.Row>
{
    [BindProperty]
    public ClientInput Input { get; set; } = new();

    protected override ClientStore.Row? Find(long id) => store.Get(id);

    public void OnGet() =>
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

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), id => this.GoOn($"/shop/clients/{id}", $"{Input.Name} is saved.{NoLongerShown(store.Get(id))}"), Saved.Version)
        : Page();

    private string NoLongerShown(ClientStore.Row? now) =>
        (Saved.FoundChoice, Saved.FoundShowsMail) == (now?.FoundChoice, now?.FoundShowsMail) ? ""
        : now?.FoundChoice == FoundChoice.Contact ? " Finders are not shown the new address until the client agrees to that."
        : " Finders are not shown what you changed until the client agrees to it; until then, what they write is passed on.";
}
