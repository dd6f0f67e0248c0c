using System.Text;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Records.Tags;
using TagPage.Web.Http;
using TagPage.Web.Http.Limits;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Tag;

/// <summary>The restring-by date as a file for the player's own calendar.</summary>
public sealed class CalendarModel(TagLookup door, CalendarStore calendars, ShopStore shops, ShopClock clock, PublicAddress address) : PageModel
{
    public IActionResult OnGet(string code)
    {
        var visit = door.Open(code, HttpContext);
        if (visit.Answer == TagAnswer.Refused)
            return StatusCode(StatusCodes.Status429TooManyRequests);
        if (visit is not { Racket: { Due: { } due } racket } || calendars.Of(racket.Code) is not { } mark)
            return NotFound();
        var entry = new CalendarFile(racket, due, mark, address.Of($"/t/{racket.Code}"), clock.Now, TagWords.Of(HttpContext));
        return File(Encoding.UTF8.GetBytes(entry.Write(shops.Get())), "text/calendar; charset=utf-8", "restring.ics");
    }
}
