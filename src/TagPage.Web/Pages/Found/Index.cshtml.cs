using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Data;
using TagPage.Web.Limits;

namespace TagPage.Web.Pages.Found;

/// <summary>The page for whoever found a racket. Worded alike for everybody; looking changes nothing and shows nobody's contact.</summary>
public sealed class IndexModel(FoundDoor door, FoundEventStore events, FinderMark mark, ShopStore shops, ShopClock clock, ILogger<IndexModel> log)
    : FoundModel(door, events, mark, shops, clock, log)
{
    public IActionResult OnGet(string code)
    {
        Told = ReadTold();
        if (Enter(code) is { } elsewhere)
            return elsewhere;
        if (Told is { Result: not FoundResult.Done })
            Open = null;
        return Page();
    }
}
