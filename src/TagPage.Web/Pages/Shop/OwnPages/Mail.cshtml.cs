using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>Sends a private link to the email address on file.</summary>
public sealed class MailModel(OwnPageLinkStore links) : PageModel
{
    public long Id { get; private set; }

    public IActionResult OnGet(long id) => links.Get(id) is null ? NotFound() : Redirect($"/shop/corner/link/{id}");

    public IActionResult OnPost(long id)
    {
        Id = id;
        switch (links.Mail(id))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say("The email with the link is on its way.");
        return Redirect($"/shop/corner/link/{id}");
    }
}
