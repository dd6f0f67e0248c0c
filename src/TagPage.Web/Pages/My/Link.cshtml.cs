using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Limits;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>
/// Asks for a private link. Whether the shop knows who asks is neither said nor to be told from the time: it is written
/// down, and looked at later.
/// </summary>
public sealed class LinkModel(CornerAskStore asks, AskLimits limits, ShopStore shops) : PageModel
{
    public sealed record Fields
    {
        public string? Reach { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    /// <summary>What was just asked by; null while nothing was.</summary>
    public AskWay? Asked { get; private set; }

    public ShopDetails Shop => shops.Get();

    public PageLanguage Spoken { get; private set; } = default!;

    public CornerPhrases Say => CornerWords.Of(Spoken.Language);

    public string AskedMail => Say.Link.AskedMail.Fill(
        ("hour", Spoken.Language.Number(AskLimits.MostOfAnAddress)), ("day", Spoken.Language.Number(AskLimits.MostOfAnAddressADay)));

    public void OnGet(AskWay? asked)
    {
        Spoken = CornerWords.Settle(HttpContext, null);
        Asked = asked;
    }

    public IActionResult OnPost()
    {
        Spoken = CornerWords.Settle(HttpContext, null);
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

    private (AskWay, string)? Read(string? typed) =>
        typed is null ? null
        : MailAddressAttribute.Fits(typed) ? (AskWay.Mail, typed.ToLowerInvariant())
        : Phones.Read(typed, shops.Get().Country) is { } phone ? (AskWay.Phone, phone)
        : null;
}
