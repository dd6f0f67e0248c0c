using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.My;

/// <summary>Hours that were not played after all.</summary>
public sealed class HoursRemoveModel(ClientOnFileStore clients, MyPlayStore store) : CornerModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my"));

    public IActionResult OnPost(long id)
    {
        if (store.RemoveHours(Me.Id, id) is not Outcome.Done done)
            return NotFound();
        this.Say(Say.Play.Removed);
        return Redirect(Link($"/my/rackets/{done.Id}"));
    }
}
