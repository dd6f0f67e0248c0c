using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Asks to be forgotten: what the shop keeps is said first, and for seven days it can be undone.</summary>
public sealed class ForgetModel(ClientOnFileStore clients, OwnPageCodeStore codes, ForgetStore store) : OwnPageModel(clients)
{
    public IActionResult OnGet() => AskForCode(codes) ?? Page();

    public IActionResult OnPost() => After(store.Ask(Myself, Me.Id), _ => GoOn("/my/details", Say.Details.ForgetAsked));
}
