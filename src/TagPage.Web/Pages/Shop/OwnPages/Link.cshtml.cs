using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>One private link, in every way it can be handed over.</summary>
public sealed class LinkModel(OwnPageLinkStore links, OwnPageMails texts, PublicAddress address, ShopClock clock) : RecordPage<OwnPageLinkStore.Row>
{
    public bool IsLive => links.IsLive(Saved);

    public string Link => texts.Address(Saved);

    public string SmsText => texts.LinkSms(Saved);

    public DateOnly Until => DayOf(Saved.ExpiresAt);

    /// <summary>Why the link may not open on the client's phone; null where it should.</summary>
    public string? Warning => address.IsHttps ? null : $"{address.Base} is not https. Clients’ own pages open over https only; set an https address under Settings → Web address first.";

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    protected override OwnPageLinkStore.Row? Find(long id) => links.Get(id);

    public void OnGet()
    {
    }

    /// <summary>To the mail address on file.</summary>
    public IActionResult OnPostMail() =>
        this.After(links.Mail(User.AtShop(), Id), _ => this.GoOn($"/shop/corner/link/{Id}", "The email with the link is on its way."));

    public IActionResult OnPostRevoke() => this.After(links.Revoke(User.AtShop(), Id), _ =>
        this.GoOn($"/shop/corner/{Saved.ClientId}", "The link is withdrawn, and the browsers it signed in are signed out."));
}
