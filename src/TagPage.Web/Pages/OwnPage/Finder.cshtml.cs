using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Found;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Answers a finder who left an email address, once, without showing the client's own.</summary>
public sealed class FinderModel(ClientOnFileStore clients, OwnPageFoundStore mine, FinderReplyStore store) : OwnPageModel(clients)
{
    public const int Longest = ReplyModel.Longest;

    public sealed record Fields
    {
        [DataType(DataType.MultilineText)]
        public string? Text { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public FinderReplyStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (Input.Text is null)
            ModelState.AddModelError("Input.Text", Spoken.Phrases.Answer.Empty);
        Limit("Input.Text", Input.Text, Longest);
        if (!ModelState.IsValid)
            return Page();
        this.Say(store.Send(Saved, Input.Text!) ? Spoken.Phrases.Answer.SentHeading : Spoken.Phrases.Answer.SentText);
        return Redirect(Link("/my/found"));
    }

    /// <summary>One of this client's, not answered yet, with an address to answer to.</summary>
    private bool Load(long id)
    {
        if (!mine.Events(Me.Id).Any(e => e.Id == id && FoundModel.CanAnswer(e)) || store.Get(id) is not { } row || row.ClientId != Me.Id)
            return false;
        Saved = row;
        return true;
    }
}
