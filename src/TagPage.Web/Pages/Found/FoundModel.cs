using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Tags;
using TagPage.Core.Text;
using TagPage.Records.Audit;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Limits;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Found;

/// <summary>What the pages of a finder share: what is open, the message form, and the way back.</summary>
public abstract class FoundModel(FoundLookup door, FoundEventStore events, FinderMark mark, ShopStore shops, ShopClock clock, SecurityLog log) : PageModel
{
    private const string Outcome = "Found";

    [BindProperty]
    public FoundInput Input { get; set; } = new();

    public TagCode Code { get; private set; }

    /// <summary>Null for the shop's contact and nothing else.</summary>
    public FoundStore.Row? Open { get; protected set; }

    public ShopDetails Shop => shops.Get();

    public PageLanguage Spoken => PageLanguage.Of(HttpContext);

    public FoundPhrases Say => Spoken.Phrases.Found;

    /// <summary>A new key for each form shown; what was pressed before keeps its own.</summary>
    public string FormKeyNow { get; } = FormKey.New();

    /// <summary>What is wrong with the message as it was sent.</summary>
    public string? MessageError { get; protected set; }

    public string? ReachError { get; protected set; }

    public string? PlaceError { get; protected set; }

    /// <summary>What was written and not passed on stays in its form.</summary>
    public bool KeepsMessage => MessageError is not null && Input.Message is not null;

    /// <summary>The result of the last press, shown once.</summary>
    public (FoundResult Result, FoundKind Kind)? Told { get; protected set; }

    public string Link(string below = "") => Spoken.Link($"/t/{Code}/found{below}");

    /// <summary>Null when the page can be shown; else the answer in its place.</summary>
    protected IActionResult? Enter(string code)
    {
        var visit = door.Open(code, HttpContext);
        if (visit.Wait > TimeSpan.Zero)
            return this.TooMany(visit.Wait);
        if (visit.Code is not { } read)
            return NotFound();
        (Code, Open) = (read, visit.Open);
        return null;
    }

    protected FoundAnswer Press(FoundKind kind)
    {
        var answer = events.Take(new FinderPress(Code, kind, mark.Of(HttpContext), KeyOf(Input.FormKey), clock.Now)
        {
            Language = Spoken.Language.Code,
            Message = (kind == FoundKind.Message ? Input.Message : NeedsPlace(kind) ? Input.Place : null) ?? "",
            Contact = kind == FoundKind.Message ? Input.Reach ?? "" : "",
        });
        if (answer.Result == FoundResult.TooMany)
            log.Log(HttpContext, AuditEvent.FindersRefused, detail: $"{kind}");
        return answer;
    }

    /// <summary>Whoever looks for the racket has to know which desk, or where it was seen.</summary>
    protected static bool NeedsPlace(FoundKind kind) => kind is FoundKind.AtDesk or FoundKind.StillThere;

    protected string? TooLong(string phrase, string? text, int most) =>
        text?.Length > most ? phrase.Fill(("most", Spoken.Language.Number(most)), ("n", Spoken.Language.Number(text.Length))) : null;

    /// <summary>Back to the found page, to where it says what came of it.</summary>
    protected RedirectResult Tell(FoundResult result, FoundKind kind)
    {
        TempData[Outcome] = $"{result} {kind}";
        return Redirect(Link() + "#thanks");
    }

    /// <summary>The result of the press before this page, or null. Shown once. Looking sets no cookie for those who have none.</summary>
    protected (FoundResult, FoundKind)? ReadTold() =>
        Request.Cookies.Count > 0 && TempData[Outcome] is string told && told.Split(' ') is [var result, var kind]
            ? (Enum.Parse<FoundResult>(result), Enum.Parse<FoundKind>(kind))
            : null;

    /// <summary>The page again, with what is wrong beside its field.</summary>
    protected PageResult Refused()
    {
        ModelState.AddModelError("", "");
        return Page();
    }

    private static string KeyOf(string? sent) => sent is { Length: FormKeys.KeyLength } ? sent : FormKey.New();
}

/// <summary>What a finder's forms post.</summary>
public sealed record FoundInput
{
    public string? FormKey { get; init; }

    [DataType(DataType.MultilineText)]
    public string? Message { get; init; }

    public string? Reach { get; init; }

    public string? Place { get; init; }
}
