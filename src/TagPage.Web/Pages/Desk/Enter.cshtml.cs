using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Events;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Desk;

/// <summary>Behind the square that the owner shows. Looking does nothing; the press signs this browser in at the desk.</summary>
public sealed class EnterModel(EventSessionStore sessions, CookieRules cookies) : LinkPage<EventRow>
{
    protected override EventRow? Find(string key) => sessions.Of(key);

    public IActionResult OnPost()
    {
        if (sessions.Begin(Saved) is not { } secret)
            return Missing();
        DeskCookie.Give(HttpContext, cookies, secret);
        return Redirect($"/desk/{Saved.Id}");
    }
}
