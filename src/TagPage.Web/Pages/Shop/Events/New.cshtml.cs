using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Events;

public sealed class NewModel(EventStore store, ShopClock clock) : PageModel
{
    [BindProperty]
    public EventInput Input { get; set; } = new();

    public void OnGet() => Input = new EventInput { FormKey = FormKey.New(), FromOn = clock.Today };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Add(User.AtShop(), Input.ToEntry()), id => this.GoOn($"/shop/events/{id}", $"{Input.Name} is on file. Next, say who strings there."))
        : Page();
}
