using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>One private link, in every way it can be handed over.</summary>
public sealed class LinkModel(OwnPageLinkStore links, OwnPageMails texts, PublicAddress address, ShopClock clock) : PageModel
{
    public OwnPageLinkStore.Row Saved { get; private set; } = new();

    public bool IsLive => links.IsLive(Saved);

    public string Link => texts.Address(Saved);

    public string SmsText => texts.LinkSms(Saved);

    public DateOnly Until => DayOf(Saved.ExpiresAt);

    /// <summary>Why the link may not open on the client's phone; null where it should.</summary>
    public string? Warning => address.IsHttps ? null : $"{address.Base} is not https. Clients’ own pages open over https only; set TagPage:Address to an https address first.";

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public IActionResult OnGet(long id)
    {
        if (links.Get(id) is not { } link)
            return NotFound();
        Saved = link;
        return Page();
    }
}
