using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Pages.Found;

/// <summary>Passes a ready-made answer on, and asks which place where it speaks of one.</summary>
public sealed class AnswerModel(FoundLookup door, FoundEventStore events, FinderMark mark, ShopStore shops, ShopClock clock, SecurityLog log)
    : FoundModel(door, events, mark, shops, clock, log)
{
    public IActionResult OnGet(string code) => Enter(code) ?? Redirect(Link());

    public IActionResult OnPost(string code, FoundKind says)
    {
        if (Enter(code) is { } elsewhere)
            return elsewhere;
        if (!ModelState.IsValid || says is not (FoundKind.AtDesk or FoundKind.HaveIt or FoundKind.StillThere))
            return Redirect(Link());
        if (NeedsPlace(says))
            PlaceError = Input.Place is null ? Say.PlaceEmpty : TooLong(Say.ReachTooLong, Input.Place, FinderPress.LongestPlace);
        if (PlaceError is not null)
            return Refused();
        return Tell(Press(says).Result, says);
    }
}
