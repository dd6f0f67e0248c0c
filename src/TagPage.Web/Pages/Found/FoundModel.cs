using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Tags;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Limits;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Found;

/// <summary>What the pages of a finder share: what is open, the message form, and the way back.</summary>
public abstract class FoundModel(FoundLookup door, FoundEventStore events, FinderMark mark, ShopStore shops, ShopClock clock, ILogger log) : PageModel
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
            Message = kind == FoundKind.Message ? Input.Message ?? "" : "",
            Contact = kind == FoundKind.Message ? Input.Reach ?? "" : "",
        });
        if (answer.Result == FoundResult.TooMany)
            log.LogWarning("Finders pressed {Kind} too often; the shop's contact was shown instead.", kind);
        return answer;
    }

    /// <summary>Back to the found page, which says what came of it.</summary>
    protected RedirectResult Tell(FoundResult result, FoundKind kind)
    {
        TempData[Outcome] = $"{result} {kind}";
        return Redirect(Link());
    }

    /// <summary>The result of the press before this page, or null. Shown once. Looking sets no cookie for those who have none.</summary>
    protected (FoundResult, FoundKind)? ReadTold() =>
        Request.Cookies.Count > 0 && TempData[Outcome] is string told && told.Split(' ') is [var result, var kind]
            ? (Enum.Parse<FoundResult>(result), Enum.Parse<FoundKind>(kind))
            : null;

    private static string KeyOf(string? sent) => sent is { Length: FormKeys.KeyLength } ? sent : FormKey.New();
}

/// <summary>What a finder's forms post.</summary>
public sealed record FoundInput
{
    public string? FormKey { get; init; }

    [DataType(DataType.MultilineText)]
    public string? Message { get; init; }

    public string? Reach { get; init; }
}
