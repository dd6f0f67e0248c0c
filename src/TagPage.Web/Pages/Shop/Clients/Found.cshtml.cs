using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class FoundModel(FoundChoiceStore store) : RecordPage<FoundChoiceStore.Row>
{
    [BindProperty]
    public FoundChoiceInput Input { get; set; } = new();

    protected override FoundChoiceStore.Row? Find(long id) => store.Get(User.AtShop(), id);

    public void OnGet() => Input = new FoundChoiceInput { Version = Saved.Version, Choice = Saved.Choice, Always = Saved.Always, ShowsMail = Saved.ShowsMail };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn($"/shop/clients/{Id}", $"What finders get for {Saved.Name}’s rackets is saved."), Saved.Version)
        : Page();
}
