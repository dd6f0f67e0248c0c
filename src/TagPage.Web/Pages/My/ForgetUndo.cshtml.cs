using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Forms;
using TagPage.Web.Pages.My.Taking;

namespace TagPage.Web.Pages.My;

/// <summary>Changes one's mind about being forgotten.</summary>
public sealed class ForgetUndoModel(ClientOnFileStore clients, ForgetStore store) : CornerModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my/details"));

    public IActionResult OnPost()
    {
        store.Undo(Me.Id);
        this.Say(Say.Details.ForgetUndone);
        return Redirect(Link("/my/details"));
    }
}
