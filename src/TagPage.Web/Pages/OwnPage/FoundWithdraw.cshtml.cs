using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>One press withdraws what finders may get: at once, without a code, even on pages that are already open.</summary>
public sealed class FoundWithdrawModel(ClientOnFileStore clients, FoundChoiceStore choices) : OwnPageModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my/found"));

    public IActionResult OnPost()
    {
        choices.Withdraw(Me.Id);
        this.Say(Say.Lost.Withdrawn);
        return Redirect(Link("/my/found"));
    }
}
