using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Text;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>What the own page's pages share: whose own page it is, the words, and how a form post ends.</summary>
public abstract partial class OwnPageModel(ClientOnFileStore clients) : PageModel
{
    public ClientOnFileStore.Row Me { get; private set; } = new();

    /// <summary>Who acts here.</summary>
    protected Who Myself => Who.Client(Me.Id, User.OwnPageSession());

    public PageLanguage Spoken { get; private set; } = default!;

    public OwnPagePhrases Say => OwnPageWords.Of(Spoken.Language);

    public OwnPageNames Names => new(Spoken);

    /// <summary>The code ran out while the form was filled in.</summary>
    public bool NeedsCode { get; private set; }

    public string CodeLink => Link("/my/code", ("next", Request.Path.Value!));

    [NonHandler]
    public override void OnPageHandlerSelected(PageHandlerSelectedContext context)
    {
        Me = clients.Get(User.ClientId()) ?? throw new InvalidOperationException("A session outlived its client.");
        Spoken = OwnPageWords.Settle(HttpContext, Me.Language);
    }

    /// <summary>For what could hurt. Null where a code was just typed; else the way to one.</summary>
    protected IActionResult? AskForCode(OwnPageCodeStore codes) => codes.IsFresh(Myself) ? null : Redirect(CodeLink);

    /// <summary>How every form post ends: absent is 404, a refusal goes to its field and the page is shown again.</summary>
    /// <param name="outcome">What became of the write.</param>
    /// <param name="done">Goes on, given the record's id.</param>
    /// <param name="storedVersion">Of a record that was changed: once told that it was saved meanwhile, the next press may replace that.</param>
    protected IActionResult After(Outcome outcome, Func<long, IActionResult> done, int? storedVersion = null)
    {
        if (outcome is Outcome.Done { Id: var id })
            return done(id);
        if (outcome is not Outcome.Refused { Why: var why })
            return NotFound();
        if (why is SavedMeanwhile && storedVersion is { } version)
            ModelState.SetModelValue("Input.Version", version, version.ToString(CultureInfo.InvariantCulture));
        return Refuse(why);
    }

    /// <summary>What was typed stays; where only the code is missing, it can be fetched beside it.</summary>
    protected PageResult Refuse(Refusal why)
    {
        NeedsCode = why is CodeRanOut;
        ModelState.AddModelError(why.Field.Length == 0 ? "" : "Input." + why.Field, OwnPageRefusals.Of(why, Spoken.Language));
        return Page();
    }

    /// <summary>Says what was done on the page that comes next.</summary>
    protected IActionResult GoOn(string path, string sentence) => PageModelExtensions.GoOn(this, Link(path), sentence);

    /// <summary>A text that is too long is said at its field and kept as typed.</summary>
    protected void Limit(string field, string? text, int most)
    {
        if (text?.Length > most)
            ModelState.AddModelError(field, Spoken.Phrases.Reminder.TextTooLong.Fill(("most", $"{most}"), ("n", $"{text.Length}")));
    }

    /// <summary>A link on the page, in the page's language.</summary>
    /// <param name="path">Begins with a slash and has no query.</param>
    /// <param name="query">What else stands in it.</param>
    public string Link(string path, params ReadOnlySpan<(string Key, string Value)> query)
    {
        var link = Spoken.Link(path);
        foreach (var (key, value) in query)
            link += $"{(link.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{key}={Uri.EscapeDataString(value)}";
        return link;
    }

    /// <summary>Where a form of the page that <paramref name="path"/> leads to is sent.</summary>
    public string Press(string path, string handler) => Link(path, ("handler", handler));

    /// <summary>Whether an address that came with the request may be gone to: a plain path of the own page.</summary>
    protected static bool IsBelowMy(string? path) => path is not null && OwnPagePath().IsMatch(path);

    [GeneratedRegex("^/my(/[a-z0-9-]+)*$")]
    private static partial Regex OwnPagePath();
}
