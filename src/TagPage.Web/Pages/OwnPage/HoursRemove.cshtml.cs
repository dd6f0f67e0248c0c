using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Hours that were not played after all.</summary>
public sealed class HoursRemoveModel(ClientOnFileStore clients, HoursStore store) : OwnPageModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my"));

    public IActionResult OnPost(long id)
    {
        if (store.Remove(Myself, id) is not Outcome.Done done)
            return NotFound();
        this.Say(Say.Play.Removed);
        return Redirect(Link($"/my/rackets/{done.Id}"));
    }
}
