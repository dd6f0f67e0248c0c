using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Asks for the data to be deleted: the page first says what the shop keeps, and for seven days it can be undone.</summary>
public sealed class ForgetModel(ClientOnFileStore clients, OwnPageCodeStore codes, ForgetStore store) : FreshModel(clients, codes)
{
    protected override string Here => "/my/forget";

    public IActionResult OnGet() => AskForCode() ?? Page();

    public IActionResult OnPost()
    {
        switch (store.Ask(Me.Id, User.OwnPageSession()))
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
