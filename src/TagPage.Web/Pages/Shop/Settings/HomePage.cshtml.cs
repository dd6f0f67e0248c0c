using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Colour;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class HomePageModel(SettingsStore store, ShopStore shops, PublicStyle style) : PageModel
{
    [BindProperty]
    public PageInput Input { get; set; } = new();

    /// <summary>Only preview the page; nothing is saved.</summary>
    [BindProperty]
    public bool Preview { get; set; }

    public IHtmlContent? Previewed { get; private set; }

    /// <summary>The accent as the pages will use it, in light and in dark; empty for the product's own.</summary>
    public IReadOnlyList<Accent> Accents =>
        Rgb.TryParse(Input.Accent, out var wish) ? [style.Accents.On(wish, 0), style.Accents.On(wish, 1)] : [];

    public void OnGet()
    {
        var shop = shops.Get();
        Input = new PageInput { Version = shop.Version, HomeMarkdown = shop.HomeMarkdown, Accent = shop.Accent };
    }

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (Preview)
        {
            Previewed = OwnersMarkdown.Render(Input.HomeMarkdown ?? "");
            return Page();
        }
        return this.After(store.SavePage(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/settings/page", "Your page is saved.", "See it", "/"), shops.Get().Version);
    }
}
