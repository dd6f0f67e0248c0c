using Microsoft.AspNetCore.Mvc;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Hours;

public sealed class NewModel(HoursStore store, ShopClock clock) : RecordPage<HoursStore.Racket>
{
    [BindProperty]
    public HoursInput Input { get; set; } = new();

    protected override HoursStore.Racket? Find(long id) => store.Of(User.AtShop(), id);

    public void OnGet() => Input = new HoursInput { FormKey = FormKey.New(), PlayedOn = clock.Today };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Add(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn($"/shop/rackets/{Id}#played", "The hours are saved."))
        : Page();
}
