using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>
/// Behind a private link. Looking does nothing, so that scanners and previews may look as often as they like; the press
/// exchanges the link for a session of this browser.
/// </summary>
public sealed class EnterModel(OwnPageLinkStore links, OwnPageSessionStore sessions, CookieRules cookies, ShopStore shops) : LinkPage<OwnPageLinkStore.Row>
{
    public ShopDetails Shop => shops.Get();

    public PageLanguage Spoken { get; private set; } = default!;

    public OwnPagePhrases Say => OwnPageWords.Of(Spoken.Language);

    protected override OwnPageLinkStore.Row? Find(string key)
    {
        var link = links.Of(key);
        Spoken = OwnPageWords.Settle(HttpContext, link?.Language);
        return link;
    }

    public IActionResult OnPost()
    {
        if (sessions.Begin(Saved) is not { } secret)
            return Missing();
        OwnPageCookie.Give(HttpContext, cookies, secret);
        return Redirect(Spoken.Link("/my"));
    }
}
