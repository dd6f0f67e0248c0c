using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class RetryModel(SendReminderStore sending) : PageModel
{
    public IActionResult OnPost(long id) => this.After(sending.Retry(Who.Shop, id), _ => this.GoOn("/shop/nudges", "The email is on its way again."));
}
