using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Events;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Desk;

public sealed class LeaveModel(EventSessionStore sessions, CookieRules cookies) : PageModel
{
    public void OnGet()
    {
    }

    public IActionResult OnPost()
    {
        sessions.End(DeskCookie.Secret(HttpContext, cookies));
        cookies.TakeBack(HttpContext, CookieRules.Desk);
        return Redirect("/");
    }
}
