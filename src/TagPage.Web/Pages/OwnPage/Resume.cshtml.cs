using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>A player plays again.</summary>
public sealed class ResumeModel(ClientOnFileStore clients, PauseStore store) : OwnPageModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my"));

    public IActionResult OnPost(long id)
    {
        if (store.End(Myself, id) is Outcome.Absent)
            return NotFound();
        this.Say(Say.Play.ResumeSaved);
        return Redirect(Link("/my"));
    }
}
