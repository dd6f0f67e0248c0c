using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Where signing out ends.</summary>
public sealed class OutModel : PageModel
{
    /// <summary>Every link so far is void too.</summary>
    [BindProperty(SupportsGet = true)]
    public bool Everywhere { get; set; }

    public PageLanguage Spoken { get; private set; } = default!;

    public OwnPagePhrases Say => OwnPageWords.Of(Spoken.Language);

    public void OnGet() => Spoken = OwnPageWords.Settle(HttpContext, null);
}
