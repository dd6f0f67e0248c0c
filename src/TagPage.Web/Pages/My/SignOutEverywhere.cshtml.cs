using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Hosting;

namespace TagPage.Web.Pages.My;

public sealed class SignOutEverywhereModel(ClientOnFileStore clients, CornerSessionStore sessions, CookieRules cookies) : CornerModel(clients)
{
    public IActionResult OnGet() => Redirect(Link("/my/sign-out"));

    public IActionResult OnPost()
    {
        sessions.EndAll(Me.Id);
        CornerCookie.TakeBack(HttpContext, cookies);
        return Redirect(Link("/my/out", ("everywhere", "true")));
    }
}
