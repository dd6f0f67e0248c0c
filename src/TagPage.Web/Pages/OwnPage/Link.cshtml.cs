using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Text;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>
/// Asks for a private link. Whether the shop knows who is asking is neither said nor measurable: the request is recorded and
/// handled later.
/// </summary>
public sealed class LinkModel(LinkRequestStore asks, LinkRequestLimits limits, ShopStore shops) : PageModel
{
    public sealed record Fields
    {
        public string? Reach { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    /// <summary>What was just asked with; null if nothing was.</summary>
    public LinkRequestWay? Asked { get; private set; }

    public ShopDetails Shop => shops.Get();

    public PageLanguage Spoken { get; private set; } = default!;

    public OwnPagePhrases Say => OwnPageWords.Of(Spoken.Language);

    public string AskedMail => Say.Link.AskedMail.Fill(
        ("hour", Spoken.Language.Number(LinkRequestLimits.MostOfAnAddress)), ("day", Spoken.Language.Number(LinkRequestLimits.MostOfAnAddressADay)));

    public void OnGet(LinkRequestWay? asked)
    {
        Spoken = OwnPageWords.Settle(HttpContext, null);
        Asked = asked;
    }

    public IActionResult OnPost()
    {
        Spoken = OwnPageWords.Settle(HttpContext, null);
        if (limits.Wait(Source.Of(HttpContext)) is var wait && wait > TimeSpan.Zero)
            return this.TooMany(wait, "Input.Reach", Say.Link.AskTooMany.Fill(("minutes", Spoken.Language.Number((int)Math.Ceiling(wait.TotalMinutes)))));
        if (Read(Input.Reach) is not var (way, reach))
        {
            ModelState.AddModelError("Input.Reach", Say.Link.AskUnread);
            return Page();
        }
        if (limits.TryTake(Source.Of(HttpContext), reach))
            asks.Add(way, reach);
        var next = Spoken.Link("/my/link");
        return Redirect(next + (next.Contains('?', StringComparison.Ordinal) ? "&" : "?") + "asked=" + way);
    }

    private (LinkRequestWay, string)? Read(string? typed) =>
        typed is null ? null
        : MailAddressAttribute.Fits(typed) ? (LinkRequestWay.Mail, typed.ToLowerInvariant())
        : Phones.Read(typed, shops.Get().Country) is { } phone ? (LinkRequestWay.Phone, phone)
        : null;
}
