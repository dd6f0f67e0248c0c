using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.My;

/// <summary>A player plays again.</summary>
public sealed class ResumeModel(ClientOnFileStore clients, MyPlayStore store) : CornerModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my"));

    public IActionResult OnPost(long id)
    {
        if (store.Resume(Me.Id, id) is Outcome.Absent)
            return NotFound();
        this.Say(Say.Play.ResumeSaved);
        return Redirect(Link("/my"));
    }
}
