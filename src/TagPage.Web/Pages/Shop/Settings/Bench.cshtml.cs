using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class BenchModel(SettingsStore store, ShopStore shops) : PageModel
{
    public sealed record BenchInput
    {
        public int Version { get; init; }

        public bool Timer { get; init; }

        public bool SingleKeys { get; init; }

        public BenchEntry ToEntry() => new() { Version = Version, Timer = Timer, SingleKeys = SingleKeys };
    }

    [BindProperty]
    public BenchInput Input { get; set; } = new();

    public void OnGet() => Input = new() { Version = shops.Get().Version, Timer = shops.Get().BenchTimer, SingleKeys = shops.Get().SingleKeys };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.SaveBench(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/settings", "The bench’s settings are saved."), shops.Get().Version)
        : Page();
}
