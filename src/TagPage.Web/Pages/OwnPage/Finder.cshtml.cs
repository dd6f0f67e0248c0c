using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Web.Pages.Found;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Answers a finder who left a mail address, once, without showing one's own.</summary>
public sealed class FinderModel(ClientOnFileStore clients, OwnPageFoundStore mine, FinderReplyStore store) : OwnRecordPage<FinderReplyStore.Row>(clients)
{
    public const int Longest = ReplyModel.Longest;

    public sealed record Fields
    {
        [DataType(DataType.MultilineText)]
        public string? Text { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    /// <summary>One of this client's, not answered yet, with an address to answer to.</summary>
    protected override FinderReplyStore.Row? Find(long id) =>
        mine.Events(Me.Id).Any(e => e.Id == id && FoundModel.CanAnswer(e)) && store.Get(id) is { } row && row.ClientId == Me.Id ? row : null;

    public void OnGet()
    {
    }

    public IActionResult OnPost()
    {
        if (Input.Text is null)
            ModelState.AddModelError("Input.Text", Spoken.Phrases.Answer.Empty);
        Limit("Input.Text", Input.Text, Longest);
        if (!ModelState.IsValid)
            return Page();
        return After(store.Send(Myself, Saved, Input.Text!), _ => GoOn("/my/found", Spoken.Phrases.Answer.SentHeading));
    }
}
