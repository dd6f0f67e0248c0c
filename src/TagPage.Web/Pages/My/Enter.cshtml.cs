using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Hosting;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>
/// Behind a private link. Looking gives nothing, so that scanners and previews may look as often as they like; the press
/// exchanges the link for a session of this browser.
/// </summary>
public sealed class EnterModel(CornerLinkStore links, CornerSessionStore sessions, CookieRules cookies, ShopStore shops) : PageModel
{
    public bool IsOpen { get; private set; }

    public ShopDetails Shop => shops.Get();

    public PageLanguage Spoken { get; private set; } = default!;

    public CornerPhrases Say => CornerWords.Of(Spoken.Language);

    public IActionResult OnGet(string token) => Load(token) is null ? Void() : Page();

    public IActionResult OnPost(string token)
    {
        if (Load(token) is not { } link)
            return Void();
        if (sessions.Begin(link) is not { } secret)
            return Void();
        CornerCookie.Give(HttpContext, cookies, secret);
        return Redirect(Spoken.Link("/my"));
    }

    private CornerLinkStore.Row? Load(string token)
    {
        var link = links.Of(token);
        Spoken = CornerWords.Settle(HttpContext, link?.Language);
        IsOpen = link is not null;
        return link;
    }

    private PageResult Void()
    {
        IsOpen = false;
        Response.StatusCode = StatusCodes.Status404NotFound;
        return Page();
    }
}
