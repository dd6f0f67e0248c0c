using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Hosting;

namespace TagPage.Web.Pages.My;

public sealed class SignOutModel(ClientOnFileStore clients, CornerSessionStore sessions, CookieRules cookies) : CornerModel(clients)
{
    public void OnGet()
    {
    }

    public IActionResult OnPost()
    {
        sessions.End(User.CornerSession());
        CornerCookie.TakeBack(HttpContext, cookies);
        return Redirect(Link("/my/out"));
    }
}
