using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Events;

public sealed class EditModel(EventStore store, ShopStore shops) : RecordPage<EventRow>
{
    [BindProperty]
    public EventInput Input { get; set; } = new();

    protected override EventRow? Find(long id) => store.Get(User.AtShop(), id);

    public void OnGet() => Input = EventInput.Of(Saved, shops.Get());

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn($"/shop/events/{Id}", $"{Input.Name} is saved."), Saved.Version)
        : Page();
}
