using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Sends the code.</summary>
public sealed class CodeSendModel(ClientOnFileStore clients, OwnPageCodeStore codes) : OwnPageModel(clients)
{
    [BindProperty(SupportsGet = true, Name = "next")]
    public string? Next { get; set; }

    private string Onward => IsBelowMy(Next) ? Next! : "/my";

    public IActionResult OnGet() => Redirect(Link("/my/code", ("next", Onward)));

    public IActionResult OnPost()
    {
        switch (codes.Send(Me.Id))
        {
            case OwnPageCodeStore.Sent.TooMany:
                this.Say(Say.Code.TooMany);
                return Redirect(Link("/my/code", ("next", Onward), ("sent", "true")));
            case OwnPageCodeStore.Sent.NoMail:
                return Redirect(Link("/my/code", ("next", Onward)));
            default:
                return Redirect(Link("/my/code", ("next", Onward), ("sent", "true")));
        }
    }
}
