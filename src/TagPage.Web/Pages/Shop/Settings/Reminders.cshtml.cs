using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Forecast;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Mail;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class RemindersModel(SettingsStore store, ShopStore shops, ShopClock clock, PublicAddress address) : PageModel
{
    [BindProperty]
    public RemindersInput Input { get; set; } = new();

    /// <summary>Only preview a reminder; nothing is saved.</summary>
    [BindProperty]
    public bool Preview { get; set; }

    /// <summary>A reminder to an invented household.</summary>
    public ReminderWords? Previewed { get; private set; }

    public string SampleLink => address.Of("/n/12-AAAAAAAAAAAAAAAAAAAAAA");

    public string SampleStop => address.Of("/n/stop/12-AAAAAAAAAAAAAAAAAAAAAA");

    public void OnGet() => Input = RemindersInput.Of(shops.Get());

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (Preview)
        {
            Previewed = new ReminderWords(Input.On(shops.Get()), Languages.English, "Wilma Sample", [Sample("Kim", 1, -9), Sample("Kim", 2, 4)]);
            return Page();
        }
        return this.After(store.SaveReminders(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/settings", "The reminders are saved."), shops.Get().Version);
    }

    private NamedRacket Sample(string player, int number, int daysLeft) => new(player, number, new RestringBy
    {
        State = daysLeft < 0 ? RestringState.Past : RestringState.DueSoon,
        Due = clock.Today.AddDays(daysLeft),
        DaysLeft = daysLeft,
        DecidedBy = LimitKind.Hours,
    });
}
