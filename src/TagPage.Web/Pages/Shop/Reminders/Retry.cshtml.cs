using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class RetryModel(SendReminderStore sending) : PageModel
{
    public IActionResult OnPost(long id) => this.After(sending.Retry(User.AtShop(), id), _ => this.GoOn("/shop/nudges", "The email is on its way again."));
}
