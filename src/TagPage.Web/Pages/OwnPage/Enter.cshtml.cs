using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>
/// Behind a private link. Looking does nothing, so that scanners and previews may look as often as they like; the press
/// exchanges the link for a session of this browser.
/// </summary>
public sealed class EnterModel(OwnPageLinkStore links, OwnPageSessionStore sessions, CookieRules cookies, ShopStore shops) : PageModel
{
    public bool IsOpen { get; private set; }

    public ShopDetails Shop => shops.Get();

    public PageLanguage Spoken { get; private set; } = default!;

    public OwnPagePhrases Say => OwnPageWords.Of(Spoken.Language);

    public IActionResult OnGet(string token) => Load(token) is null ? Void() : Page();

    public IActionResult OnPost(string token)
    {
        if (Load(token) is not { } link)
            return Void();
        if (sessions.Begin(link) is not { } secret)
            return Void();
        OwnPageCookie.Give(HttpContext, cookies, secret);
        return Redirect(Spoken.Link("/my"));
    }

    private OwnPageLinkStore.Row? Load(string token)
    {
        var link = links.Of(token);
        Spoken = OwnPageWords.Settle(HttpContext, link?.Language);
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
