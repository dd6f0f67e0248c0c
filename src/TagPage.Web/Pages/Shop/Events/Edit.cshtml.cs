using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Events;

public sealed class EditModel(EventStore store, ShopStore shops) : RecordPage<EventRow>
{
    [BindProperty]
    public EventInput Input { get; set; } = new();

    protected override EventRow? Find(long id) => store.Get(Who.Shop, id);

    public void OnGet() => Input = EventInput.Of(Saved, shops.Get());

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(Who.Shop, Id, Input.ToEntry()), _ => this.GoOn($"/shop/events/{Id}", $"{Input.Name} is saved."), Saved.Version)
        : Page();
}
