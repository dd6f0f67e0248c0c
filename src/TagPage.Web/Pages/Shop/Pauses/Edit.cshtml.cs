using Microsoft.AspNetCore.Mvc;
using TagPage.Records.PlayTime;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Pauses;

public sealed class EditModel(PauseStore store) : RecordPage<PauseStore.Row>
{
    [BindProperty]
    public PauseInput Input { get; set; } = new();

    protected override PauseStore.Row? Find(long id) => store.Get(id);

    public void OnGet() => Input = new PauseInput { FromOn = Saved.FromOn, ToOn = Saved.ToOn, Note = Saved.Note };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), player => this.GoOn($"/shop/players/{player}", "The pause is saved."))
        : Page();

    public IActionResult OnPostRemove() =>
        this.After(store.Remove(User.AtShop(), Id), player => this.GoOn($"/shop/players/{player}", "The pause is removed."));
}
