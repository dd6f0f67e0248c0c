using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.Shop.Nudges;

public sealed class RetryModel(SendNudgeStore sending) : PageModel
{
    public IActionResult OnPost(long id)
    {
        if (sending.Retry(id) is Outcome.Refused refused)
            return this.Refuse(refused);
        this.Say("The mail is on its way out once more.");
        return Redirect("/shop/nudges");
    }
}
