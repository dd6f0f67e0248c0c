using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Text;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Pages.Found;

/// <summary>Passes a finder's own words on.</summary>
public sealed class MessageModel(FoundLookup door, FoundEventStore events, FinderMark mark, ShopStore shops, ShopClock clock, ILogger<MessageModel> log)
    : FoundModel(door, events, mark, shops, clock, log)
{
    public IActionResult OnGet(string code) => Enter(code) ?? Redirect(Link());

    public IActionResult OnPost(string code)
    {
        if (Enter(code) is { } elsewhere)
            return elsewhere;
        MessageError = Input.Message is null ? Say.MessageEmpty : TooLong(Say.MessageTooLong, Input.Message, FinderPress.LongestMessage);
        ReachError = ModelState["Input.Reach"]?.Errors.FirstOrDefault()?.ErrorMessage ?? TooLong(Say.ReachTooLong, Input.Reach, FinderPress.LongestContact);
        return MessageError is null && ReachError is null ? Tell(Press(FoundKind.Message).Result, FoundKind.Message) : Page();
    }

    private string? TooLong(string phrase, string? text, int most) =>
        text?.Length > most ? phrase.Fill(("most", Spoken.Language.Number(most)), ("n", Spoken.Language.Number(text.Length))) : null;
}
