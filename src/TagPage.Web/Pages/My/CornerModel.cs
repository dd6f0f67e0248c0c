using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>What the corner's pages share: whose corner it is, and the words.</summary>
public abstract class CornerModel(ClientOnFileStore clients) : PageModel
{
    public ClientOnFileStore.Row Me { get; private set; } = new();

    public PageLanguage Spoken { get; private set; } = default!;

    public CornerPhrases Say => CornerWords.Of(Spoken.Language);

    public MyNames Names => new(Spoken);

    public override void OnPageHandlerSelected(PageHandlerSelectedContext context)
    {
        Me = clients.Get(User.ClientId()) ?? throw new InvalidOperationException("A session outlived its client.");
        Spoken = CornerWords.Settle(HttpContext, Me.Language);
    }

    /// <summary>A text that is too long is said at its field and kept as typed.</summary>
    protected void Limit(string field, string? text, int most)
    {
        if (text?.Length > most)
            ModelState.AddModelError(field, Spoken.Phrases.Reminder.TextTooLong.Fill(("most", $"{most}"), ("n", $"{text.Length}")));
    }

    protected string Link(string path) => Spoken.Link(path);
}
