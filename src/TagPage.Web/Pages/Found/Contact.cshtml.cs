using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Pages.Found;

/// <summary>
/// Shows the contact, in answer to the press itself: a redirect would put a telephone number behind a GET. The answer
/// is never cached.
/// </summary>
public sealed class ContactModel(FoundLookup door, FoundEventStore events, FinderMark mark, ShopStore shops, ShopClock clock, SecurityLog log)
    : FoundModel(door, events, mark, shops, clock, log)
{
    public FoundAnswer Answer { get; private set; } = new(FoundResult.Closed);

    public IActionResult OnGet(string code) => Enter(code) ?? Redirect(Link());

    public IActionResult OnPost(string code)
    {
        if (Enter(code) is { } elsewhere)
            return elsewhere;
        Answer = Press(FoundKind.Shown);
        if (Answer.Contact is null)
            Open = null;
        return Page();
    }
}
