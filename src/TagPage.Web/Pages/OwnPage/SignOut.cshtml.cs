using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.OwnPage;

public sealed class SignOutModel(ClientOnFileStore clients, OwnPageSessionStore sessions, CookieRules cookies) : OwnPageModel(clients)
{
    public void OnGet()
    {
    }

    public IActionResult OnPost()
    {
        sessions.End(User.OwnPageSession());
        cookies.TakeBack(HttpContext, CookieRules.OwnPage);
        return Redirect(Link("/my/out"));
    }

    public IActionResult OnPostEverywhere()
    {
        sessions.EndAll(Myself, Me.Id);
        cookies.TakeBack(HttpContext, CookieRules.OwnPage);
        return Redirect(Link("/my/out", ("everywhere", "true")));
    }
}
