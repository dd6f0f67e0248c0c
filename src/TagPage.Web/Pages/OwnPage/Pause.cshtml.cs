using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>A player is not playing from today on.</summary>
public sealed class PauseModel(ClientOnFileStore clients, PauseStore store) : OwnPageModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my"));

    public IActionResult OnPost(long id)
    {
        if (store.Begin(Myself, id) is Outcome.Absent)
            return NotFound();
        this.Say(Say.Play.PauseSaved);
        return Redirect(Link("/my"));
    }
}
