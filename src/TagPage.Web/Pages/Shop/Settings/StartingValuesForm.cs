using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Forecast;
using TagPage.Records.DueDates;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>
/// A form about starting values. It first shows what they would do to the restring-by dates; sent once more unchanged,
/// it saves them.
/// </summary>
public abstract class StartingValuesForm(SettingsStore store, DateEffectStore effects, ShopStore shops, DueDateKeeper dates) : PageModel
{
    /// <summary>Marks the values whose effect was shown.</summary>
    [BindProperty]
    public string? Seen { get; set; }

    public DateEffect? Effect { get; private set; }

    public StartingValues Saved => shops.Get().StartingValues;

    protected int SavedVersion => shops.Get().Version;

    public bool IsDefault => Saved == StartingValues.Default;

    public (long Left, long All) Progress => dates.Progress();

    /// <summary>Shows the effect of values that are new, or saves those that were shown.</summary>
    protected IActionResult ShowOrSave(int version, StartingValues values, string done, string next)
    {
        if (values != Saved && Seen != MarkOf(values))
        {
            Seen = MarkOf(values);
            ModelState.Remove(nameof(Seen));
            Effect = effects.Of(values);
            return Page();
        }
        return this.After(store.SaveLives(User.AtShop(), version, values), _ => this.GoOn(next, done), shops.Get().Version);
    }

    private static string MarkOf(StartingValues values) => Convert.ToHexString(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(values)))[..16];
}
