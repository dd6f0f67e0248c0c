using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Clients;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Payers;

public sealed class EditModel(PayerStore store) : RecordPage<PayerStore.Row>
{
    [BindProperty]
    public PayerInput Input { get; set; } = new();

    protected override PayerStore.Row? Find(long id) => store.Get(id);

    public void OnGet() =>
        Input = new PayerInput
        {
            Version = Saved.Version,
            Name = Saved.Name,
            Phone = Saved.Phone is { } phone ? Phones.Shown(phone) : null,
            Mail = Saved.Mail,
            Note = Saved.Note,
        };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn("/shop/payers", $"{Input.Name} is saved."), Saved.Version)
        : Page();
}
