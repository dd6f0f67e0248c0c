using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Pages.Found;

/// <summary>The page for whoever found a racket. Worded the same for everybody; looking changes nothing and shows nobody's contact details.</summary>
public sealed class IndexModel(FoundLookup door, FoundEventStore events, FinderMark mark, ShopStore shops, ShopClock clock, SecurityLog log)
    : FoundModel(door, events, mark, shops, clock, log)
{
    public IActionResult OnGet(string code)
    {
        Told = ReadTold();
        if (Enter(code) is { } elsewhere)
            return elsewhere;
        if (Told is { } told && !told.Result.IsTaken())
            Open = null;
        return Page();
    }
}
