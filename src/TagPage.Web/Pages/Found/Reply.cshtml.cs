using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Text;
using TagPage.Records.LostAndFound;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Found;

/// <summary>Behind the private link of a notice: answer a finder who left an email address. Looking changes nothing, sending works once.</summary>
public sealed class ReplyModel(FinderReplyStore store, LinkTokens keys, ShopClock clock) : KeyPage<FinderReplyStore.Row>("token")
{
    public const int Longest = 1000;

    [BindProperty]
    [DataType(DataType.MultilineText)]
    public string? Text { get; set; }

    public string? Error { get; private set; }

    public PageLanguage Spoken => PageLanguage.Of(HttpContext);

    public AnswerPhrases Say => Spoken.Phrases.Answer;

    public string At => Spoken.Language.Moment(clock.OnTheWall(Saved.At));

    public IActionResult OnPost(string token)
    {
        Error = Text is null ? Say.Empty : Text.Length > Longest ? TooLong(Text.Length) : null;
        if (Error is not null)
        {
            ModelState.AddModelError(nameof(Text), Error);
            return Page();
        }
        store.Send(Who.Client(Saved.ClientId), Saved, Text!);
        return Redirect(Spoken.Link($"/n/finder/{token}"));
    }

    private string TooLong(int length) =>
        Spoken.Phrases.Found.MessageTooLong.Fill(("most", Spoken.Language.Number(Longest)), ("n", Spoken.Language.Number(length)));

    protected override FinderReplyStore.Row? Find(string key) =>
        LinkTokens.Claimed(key) is { } id && store.Get(id) is { } row && keys.Fits(key, LinkPurpose.AnswerFinder, id, row.Secret)
        && MailAddressAttribute.Fits(row.Contact) ? row : null;
}
