using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.My;

/// <summary>A player does not play from today on.</summary>
public sealed class PauseModel(ClientOnFileStore clients, MyPlayStore store) : CornerModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my"));

    public IActionResult OnPost(long id)
    {
        if (store.Pause(Me.Id, id) is Outcome.Absent)
            return NotFound();
        this.Say(Say.Play.PauseSaved);
        return Redirect(Link("/my"));
    }
}
