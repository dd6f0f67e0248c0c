using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.OwnPage;

public sealed class SignOutEverywhereModel(ClientOnFileStore clients, OwnPageSessionStore sessions, CookieRules cookies) : OwnPageModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my/sign-out"));

    public IActionResult OnPost()
    {
        sessions.EndAll(Me.Id);
        OwnPageCookie.TakeBack(HttpContext, cookies);
        return Redirect(Link("/my/out", ("everywhere", "true")));
    }
}
