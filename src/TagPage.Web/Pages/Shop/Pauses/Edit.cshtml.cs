using Microsoft.AspNetCore.Mvc;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Pauses;

public sealed class EditModel(PauseStore store) : RecordPage<PauseStore.Row>
{
    [BindProperty]
    public PauseInput Input { get; set; } = new();

    protected override PauseStore.Row? Find(long id) => store.Get(id);

    public void OnGet() => Input = new PauseInput { FromOn = Saved.FromOn, ToOn = Saved.ToOn, Note = Saved.Note };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(Who.Shop, Id, Input.ToEntry()), player => this.GoOn($"/shop/players/{player}", "The pause is saved."))
        : Page();

    public IActionResult OnPostRemove() =>
        this.After(store.Remove(Who.Shop, Id), player => this.GoOn($"/shop/players/{player}", "The pause is removed."));
}
