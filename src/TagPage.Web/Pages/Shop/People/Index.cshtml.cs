using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Accounts;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.People;

/// <summary>Who signs in to the shop, and whether helpers need more than a password.</summary>
public sealed class IndexModel(PeopleStore people, SettingsStore settings, ShopStore shops, ShopClock clock) : PageModel
{
    public sealed record Fields
    {
        public int Version { get; init; }

        public bool Demanded { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public IReadOnlyList<PersonRow> People => people.All(User.AtShop());

    public void OnGet() => Input = new Fields { Version = shops.Get().Version, Demanded = shops.Get().HelpersSecondStep };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(settings.SaveHelpersSecondStep(User.AtShop(), Input.Version, Input.Demanded), _ => this.GoOn("/shop/people",
            Input.Demanded ? "Helpers now need more than a password." : "For helpers a password is enough."), shops.Get().Version)
        : Page();

    public string Day(DateTimeOffset instant) => Formats.Day(clock.DayOf(instant));

    public string State(PersonRow person)
    {
        var role = person.Role == Roles.Bench ? "helps at the bench, " : "";
        var seen = person.SignedInAt is { } at ? $"signed in last on {Day(at)}" : "has not signed in yet";
        var ways = person.TwoFactor ? ", with codes" : person.Passkeys > 0 ? ", with a passkey" : "";
        return role + seen + ways + (person.InvitedUntil is { } until ? $"; the link works until {Day(until)}" : "");
    }
}
