using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Frames;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Frames;

public sealed class NewModel(FrameStore store, ShopStore shops) : PageModel
{
    [BindProperty]
    public FrameInput Input { get; set; } = new();

    /// <param name="frame">A racket's, to write less.</param>
    public void OnGet(string? frame) => Input = new FrameInput { FormKey = FormKey.New(), Name = frame, TensionUnit = shops.Get().TensionUnit };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Add(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/frames", $"{Input.Name} is in the catalogue."))
        : Page();
}
