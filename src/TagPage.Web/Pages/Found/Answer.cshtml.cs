using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Pages.Found;

/// <summary>Passes a ready-made answer on.</summary>
public sealed class AnswerModel(FoundLookup door, FoundEventStore events, FinderMark mark, ShopStore shops, ShopClock clock, ILogger<AnswerModel> log)
    : FoundModel(door, events, mark, shops, clock, log)
{
    public IActionResult OnGet(string code) => Enter(code) ?? Redirect(Link());

    public IActionResult OnPost(string code, FoundKind says)
    {
        if (Enter(code) is { } elsewhere)
            return elsewhere;
        if (!ModelState.IsValid || says is not (FoundKind.AtDesk or FoundKind.HaveIt or FoundKind.StillThere))
            return Redirect(Link());
        return Tell(Press(says).Result, says);
    }
}
