using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Keeps the data after all.</summary>
public sealed class ForgetUndoModel(ClientOnFileStore clients, ForgetStore store) : OwnPageModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my/details"));

    public IActionResult OnPost()
    {
        store.Undo(Me.Id);
        this.Say(Say.Details.ForgetUndone);
        return Redirect(Link("/my/details"));
    }
}
