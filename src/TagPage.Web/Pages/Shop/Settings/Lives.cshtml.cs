using Microsoft.AspNetCore.Mvc;
using TagPage.Records.DueDates;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class LivesModel(SettingsStore store, DateEffectStore effects, ShopStore shops, DueDateKeeper dates)
    : StartingValuesForm(store, effects, shops, dates)
{
    [BindProperty]
    public LivesInput Input { get; set; } = new();

    public void OnGet() => Input = LivesInput.Of(Saved, SavedVersion);

    public IActionResult OnPost() => ModelState.IsValid
        ? ShowOrSave(Input.Version, Input.On(Saved), "String lives are saved; every restring-by date follows them from now on.", "/shop/settings/lives")
        : Page();
}
