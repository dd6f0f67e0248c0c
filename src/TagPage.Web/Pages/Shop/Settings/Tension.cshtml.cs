using Microsoft.AspNetCore.Mvc;
using TagPage.Records.DueDates;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class TensionModel(SettingsStore store, DateEffectStore effects, ShopStore shops, DueDateKeeper dates)
    : StartingValuesForm(store, effects, shops, dates)
{
    [BindProperty]
    public TensionInput Input { get; set; } = new();

    public void OnGet() => Input = TensionInput.Of(Saved, SavedVersion);

    public IActionResult OnPost() => ModelState.IsValid
        ? ShowOrSave(Input.Version, Input.On(Saved), "Tension loss is saved; every restring-by date follows it from now on.", "/shop/settings/tension")
        : Page();
}
