using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Text;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>What the own page's pages share: whose own page it is, and the words.</summary>
public abstract partial class OwnPageModel(ClientOnFileStore clients) : PageModel
{
    public ClientOnFileStore.Row Me { get; private set; } = new();

    /// <summary>Who acts here.</summary>
    protected Who Myself => Who.Client(Me.Id);

    public PageLanguage Spoken { get; private set; } = default!;

    public OwnPagePhrases Say => OwnPageWords.Of(Spoken.Language);

    public OwnPageNames Names => new(Spoken);

    [NonHandler]
    public override void OnPageHandlerSelected(PageHandlerSelectedContext context)
    {
        Me = clients.Get(User.ClientId()) ?? throw new InvalidOperationException("A session outlived its client.");
        Spoken = OwnPageWords.Settle(HttpContext, Me.Language);
    }

    /// <summary>A text that is too long is reported at its field and kept as typed.</summary>
    protected void Limit(string field, string? text, int most)
    {
        if (text?.Length > most)
            ModelState.AddModelError(field, Spoken.Phrases.Reminder.TextTooLong.Fill(("most", $"{most}"), ("n", $"{text.Length}")));
    }

    /// <summary>A link on the page, in the page's language.</summary>
    /// <param name="path">Begins with a slash and has no query.</param>
    /// <param name="query">What else stands in it.</param>
    protected string Link(string path, params ReadOnlySpan<(string Key, string Value)> query)
    {
        var link = Spoken.Link(path);
        foreach (var (key, value) in query)
            link += $"{(link.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{key}={Uri.EscapeDataString(value)}";
        return link;
    }

    /// <summary>Whether an address that came with the request may be gone to: a plain path of the own page.</summary>
    protected static bool IsBelowMy(string? path) => path is not null && OwnPagePath().IsMatch(path);

    [GeneratedRegex("^/my(/[a-z0-9-]+)*$")]
    private static partial Regex OwnPagePath();
}
