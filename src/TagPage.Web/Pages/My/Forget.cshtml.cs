using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Forms;
using TagPage.Web.Pages.My.Taking;

namespace TagPage.Web.Pages.My;

/// <summary>Asks to be forgotten: what the shop keeps is said first, and for seven days it can be undone.</summary>
public sealed class ForgetModel(ClientOnFileStore clients, CornerCodeStore codes, ForgetStore store) : FreshModel(clients, codes)
{
    protected override string Here => "/my/forget";

    public IActionResult OnGet() => AskForCode() ?? Page();

    public IActionResult OnPost()
    {
        switch (store.Ask(Me.Id, User.CornerSession()))
        {
            case ForgetStore.Answer.NotFresh:
                return SayCodeIsOver();
            case ForgetStore.Answer.Open:
                ModelState.AddModelError("", Say.Details.ForgetOpen);
                return Page();
        }
        this.Say(Say.Details.ForgetAsked);
        return Redirect(Link("/my/details"));
    }
}
