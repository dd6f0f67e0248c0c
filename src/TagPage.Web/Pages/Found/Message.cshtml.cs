using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Pages.Found;

/// <summary>Passes a finder's own words on.</summary>
public sealed class MessageModel(FoundLookup door, FoundEventStore events, FinderMark mark, ShopStore shops, ShopClock clock, SecurityLog log)
    : FoundModel(door, events, mark, shops, clock, log)
{
    public IActionResult OnGet(string code) => Enter(code) ?? Redirect(Link());

    public IActionResult OnPost(string code)
    {
        if (Enter(code) is { } elsewhere)
            return elsewhere;
        MessageError = Input.Message is null ? Say.MessageEmpty : TooLong(Say.MessageTooLong, Input.Message, FinderPress.LongestMessage);
        ReachError = ModelState["Input.Reach"]?.Errors.FirstOrDefault()?.ErrorMessage ?? TooLong(Say.ReachTooLong, Input.Reach, FinderPress.LongestContact);
        if (MessageError is not null || ReachError is not null)
            return Refused();
        var result = Press(FoundKind.Message).Result;
        return result.IsTaken() ? Tell(result, FoundKind.Message) : Refuse(result);
    }

    /// <summary>The shop helps instead; what was written is there to be copied, or sent again later.</summary>
    private PageResult Refuse(FoundResult result)
    {
        Open = null;
        MessageError = result == FoundResult.TooMany ? Say.TooManyMessages : Say.NotPassedOn;
        return Refused();
    }
}
