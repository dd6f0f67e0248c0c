using Microsoft.AspNetCore.Mvc;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Pauses;

/// <summary>Adds a pause to a player, who is shown by name.</summary>
public sealed class NewModel(PauseStore store, ShopClock clock) : RecordPage<string>
{
    [BindProperty]
    public PauseInput Input { get; set; } = new();

    protected override string? Find(long id) => store.PlayerName(id);

    public void OnGet() => Input = new PauseInput { FormKey = FormKey.New(), FromOn = clock.Today };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Add(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn($"/shop/players/{Id}", "The pause is saved."))
        : Page();
}
