using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Reminders;

/// <summary>Emails that were given up: all of them once more, or no more of them.</summary>
public sealed class AgainModel(GivenUpStore store) : PageModel
{
    public int Count => store.Count().All;

    public IActionResult OnPost() => this.After(store.RetryAll(User.AtShop()), n => this.GoOn("/shop/nudges", n == 1 ? "The email is on its way again." : $"{n} emails are on their way again."));

    public IActionResult OnPostLeave() => this.After(store.LetAllGo(User.AtShop()), _ => this.GoOn("/shop", "The bench no longer shows them. Reminders still lists them for 30 days."));
}
